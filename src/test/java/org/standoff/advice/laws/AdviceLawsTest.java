package org.standoff.advice.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.PlacementBuilder.aPlacement;
import static org.standoff.fixture.QuestionBuilder.aQuestion;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Purpose;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.SourceLevel;
import org.standoff.acoustics.SpectrumClass;
import org.standoff.acoustics.UncertainDb;
import org.standoff.advice.Advice;
import org.standoff.advice.Adviser;
import org.standoff.advice.Assessment;
import org.standoff.advice.Assessor;
import org.standoff.advice.Change;
import org.standoff.advice.Changes;
import org.standoff.advice.ClipRisk;
import org.standoff.advice.Limits;
import org.standoff.advice.OneInput;
import org.standoff.advice.Position;
import org.standoff.advice.Question;
import org.standoff.advice.Ranked;
import org.standoff.chain.Headrooms;
import org.standoff.chain.Microphone;
import org.standoff.chain.Pad;
import org.standoff.chain.Settings;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.QuestionBuilder;

class AdviceLawsTest {
  private static final double ROUNDING_DB = 1e-9;

  @Property(seed = "301", tries = 300)
  void closerNeverLowersThePeakNorRaisesTheElectronicsHeadroom(
      @ForAll("spreadingPlacements") Placement placement,
      @ForAll("microphones") Microphone microphone,
      @ForAll @DoubleRange(min = 0.03, max = 4) double oneM,
      @ForAll @DoubleRange(min = 0.03, max = 4) double otherM) {
    Assessor near = new Assessor(aQuestion(placement).at(Math.min(oneM, otherM)).build());
    Assessor far = new Assessor(aQuestion(placement).at(Math.max(oneM, otherM)).build());
    assertThat(near.arrivals().get(0).peak().typicalDb())
        .isGreaterThanOrEqualTo(far.arrivals().get(0).peak().typicalDb() - ROUNDING_DB);
    for (int i = 0; i < near.views(microphone).size(); i++) {
      assertThat(electronicsDb(near, microphone, i))
          .isLessThanOrEqualTo(electronicsDb(far, microphone, i) + ROUNDING_DB);
    }
  }

  @Property(seed = "302", tries = 100)
  void theOrderOfTheCatalogueDoesNotMatter(
      @ForAll @Size(min = 2, max = 12) List<@From("microphones") Microphone> drawn,
      @ForAll("placements") Placement placement,
      @ForAll @IntRange(min = 0, max = 1_000_000) int shuffle) {
    List<Microphone> microphones = numbered(drawn);
    List<Microphone> shuffled = new ArrayList<>(microphones);
    Collections.shuffle(shuffled, new Random(shuffle));
    Adviser adviser = new Adviser(question(placement).build());
    assertThat(adviser.advise(shuffled)).isEqualTo(adviser.advise(microphones));
  }

  @Property(seed = "303", tries = 100)
  void ranksFollowScoresAndEqualsShareARank(
      @ForAll @Size(min = 2, max = 12) List<@From("microphones") Microphone> drawn,
      @ForAll("placements") Placement placement) {
    List<Microphone> twice = new ArrayList<>(drawn);
    twice.addAll(drawn);
    Advice advice = new Adviser(question(placement).build()).advise(numbered(twice));
    List<Ranked> ranked = advice.ranked();
    assertThat(ranked.size() + advice.refused().size()).isEqualTo(twice.size());
    for (int i = 1; i < ranked.size(); i++) {
      Ranked better = ranked.get(i - 1);
      Ranked worse = ranked.get(i);
      assertThat(worse.score()).isLessThanOrEqualTo(better.score() + 0.01);
      if (worse.score() == better.score()) {
        assertThat(worse.rank()).isEqualTo(better.rank());
      }
      assertThat(worse.rank()).isIn(better.rank(), i + 1);
    }
  }

  @Property(seed = "304", tries = 300)
  void theGuardedHeadroomFallsWithThePercentile(
      @ForAll("placements") Placement placement,
      @ForAll("microphones") Microphone microphone,
      @ForAll @DoubleRange(min = 50, max = 99.9) double one,
      @ForAll @DoubleRange(min = 50, max = 99.9) double other) {
    Assessor low = new Assessor(question(placement).guarding(Math.min(one, other)).build());
    Assessor high = new Assessor(question(placement).guarding(Math.max(one, other)).build());
    Assessment assessed = assessed(low, microphone);
    Assessment guardedMore = reassessed(high, assessed);
    assertThat(guardedMore.levels().guarded().electronicsDb())
        .isLessThanOrEqualTo(assessed.levels().guarded().electronicsDb() + ROUNDING_DB);
    assertThat(guardedMore.levels().guarded().preampInputDb())
        .isLessThanOrEqualTo(assessed.levels().guarded().preampInputDb() + ROUNDING_DB);
  }

  @Property(seed = "305", tries = 300)
  void aLargerAllowedLossNeverChoosesALowerCorner(
      @ForAll("placements") Placement placement,
      @ForAll("microphones") Microphone microphone,
      @ForAll @DoubleRange(min = 0, max = 6) double one,
      @ForAll @DoubleRange(min = 0, max = 6) double other) {
    Question strict = question(placement).allowingFilterLoss(Math.min(one, other)).build();
    Question lenient = question(placement).allowingFilterLoss(Math.max(one, other)).build();
    assertThat(cornerHz(chosen(lenient, microphone)))
        .isGreaterThanOrEqualTo(cornerHz(chosen(strict, microphone)));
    assertThat(chosen(strict, microphone).filterLossAtLowestDb())
        .isLessThanOrEqualTo(Math.min(one, other));
  }

  @Property(seed = "306", tries = 200)
  void atTheNearestDistanceTheWantedHeadroomIsThereAndJustNearerItIsNot(
      @ForAll("spreadingPlacements") Placement placement,
      @ForAll("microphones") Microphone microphone) {
    Adviser adviser = new Adviser(question(placement).build());
    Assessment chosen = chosen(adviser, microphone);
    Limits limits = Limits.of(adviser.assessor(), chosen);
    meets(chosen, adviser, limits.nearestForWantedM(), 4);
    meets(chosen, adviser, limits.nearestUnclippedM(), 0);
    if (limits.nearestForWantedM().isPresent()) {
      assertThat(limits.nearestUnclippedM().orElseThrow())
          .isLessThanOrEqualTo(limits.nearestForWantedM().getAsDouble());
    }
  }

  private static void meets(
      Assessment chosen, Adviser adviser, OptionalDouble nearestM, double neededDb) {
    if (nearestM.isEmpty()) {
      assertThat(leftDb(chosen, adviser, Limits.FARTHEST_M)).isLessThan(neededDb);
      return;
    }
    assertThat(leftDb(chosen, adviser, nearestM.getAsDouble())).isGreaterThanOrEqualTo(neededDb);
    if (nearestM.getAsDouble() > Limits.NEAREST_M) {
      assertThat(leftDb(chosen, adviser, nearestM.getAsDouble() * (1 - 1e-3))).isLessThan(neededDb);
    }
  }

  @Property(seed = "307", tries = 200)
  void atTheLoudestPeakTheGuardedHeadroomIsJustTheWantedOne(
      @ForAll("placements") Placement placement, @ForAll("microphones") Microphone microphone) {
    Adviser adviser = new Adviser(question(placement).build());
    Assessment chosen = chosen(adviser, microphone);
    double nowDb = adviser.assessor().arrivals().get(0).peak().typicalDb();
    Limits limits = Limits.of(adviser.assessor(), chosen);
    double leftDb = louder(placement, chosen, limits.loudestForWantedDbSpl() - nowDb);
    double unclippedDb = louder(placement, chosen, limits.loudestUnclippedDbSpl() - nowDb);
    assertThat(leftDb).isCloseTo(4, within(1e-6));
    assertThat(unclippedDb).isCloseTo(0, within(1e-6));
  }

  @Property(seed = "308", tries = 200)
  void thePriceOfAChangeIsTheDifferenceOfAFreshAssessment(
      @ForAll("placements") Placement placement, @ForAll("microphones") Microphone microphone) {
    Adviser adviser = new Adviser(question(placement).build());
    Assessment from = chosen(adviser, microphone);
    List<Change> changes = Changes.of(adviser.assessor(), from);
    for (Pad pad : pads(microphone)) {
      if (pad.equals(from.settings().pad())) {
        continue;
      }
      Assessment fresh =
          new Assessor(adviser.assessor().question())
              .assess(microphone, from.view(), from.settings().withPad(pad));
      Change told =
          told(changes, "pad", pad.padDb() == 0 ? "out" : "%.0f dB".formatted(pad.padDb()));
      assertThat(told).isEqualTo(difference(told, from, fresh));
    }
    Question farther = question(placement).build().at(List.of(new Position(0.35, 0, 0, 0)));
    Change moved = told(changes, "distance", "5 cm farther");
    Assessment there = reassessed(new Assessor(farther), from);
    assertThat(moved.headroomDb())
        .isCloseTo(
            there.levels().guarded().leastDb() - from.levels().guarded().leastDb(),
            within(ROUNDING_DB));
    assertThat(moved.riseAtLowestDb())
        .isCloseTo(
            there.view().riseAtLowestDb() - from.view().riseAtLowestDb(), within(ROUNDING_DB));
  }

  @Property(seed = "309", tries = 200)
  void oneInputGetsTheLeastOfTheGainsThatItsSourcesWouldGetAlone(
      @ForAll("microphones") Microphone microphone,
      @ForAll @Size(min = 2, max = 4)
          List<@DoubleRange(min = 90, max = 130) Double> typicalPeaksDb) {
    List<Assessor> assessors = new ArrayList<>();
    List<Double> own = new ArrayList<>();
    for (double peakDb : typicalPeaksDb) {
      Placement placement = aPlacement().peak(1, peakDb, 5, peakDb - 20).build();
      assessors.add(new Assessor(question(placement).build()));
    }
    Assessment chosen = assessed(assessors.get(0), microphone);
    for (Assessor assessor : assessors) {
      own.add(reassessed(assessor, chosen).levels().loudest().gain().setDb());
    }
    OneInput one = OneInput.of(assessors, chosen);
    assertThat(one.gainDb()).isEqualTo(Collections.min(own));
    assertThat(one.stepDb()).isEqualTo(Collections.max(own) - Collections.min(own));
    assertThat(one.shares()).extracting(OneInput.Share::ownGainDb).isEqualTo(own);
    for (int i = 0; i < own.size(); i++) {
      Assessment alone = reassessed(assessors.get(i), chosen);
      assertThat(one.shares().get(i).peakDbfs() - alone.levels().loudest().peakDbfs())
          .isCloseTo(one.gainDb() - own.get(i), within(ROUNDING_DB));
    }
  }

  @Property(seed = "310", tries = 300)
  void moreSpreadOfTheSheetNeverLowersARiskUnderOneHalf(
      @ForAll @DoubleRange(min = 0.5, max = 20) double electronicsDb,
      @ForAll @DoubleRange(min = 0.5, max = 20) double othersDb,
      @ForAll @DoubleRange(min = 0, max = 10) double peakSpreadDb,
      @ForAll @DoubleRange(min = 0, max = 6) double sheetSpreadDb) {
    UncertainDb peak = new UncertainDb(120, peakSpreadDb);
    Headrooms typical = new Headrooms(electronicsDb, othersDb, 30, 30);
    double sure = ClipRisk.probability(peak, typical, 0);
    double unsure = ClipRisk.probability(peak, typical, sheetSpreadDb);
    assertThat(unsure).isBetween(sure - 1e-6, 1.0);
  }

  private static double electronicsDb(Assessor assessor, Microphone microphone, int view) {
    Assessment at =
        assessor.assess(
            microphone, assessor.views(microphone).get(view), flat(assessor, microphone, view));
    return at.levels().typical().electronicsDb();
  }

  private static Settings flat(Assessor assessor, Microphone microphone, int view) {
    return new Settings(
        "main", assessor.views(microphone).get(view).pattern(), Optional.empty(), Pad.OUT, 0, 0);
  }

  private static double leftDb(Assessment chosen, Adviser adviser, double distanceM) {
    Question there = adviser.assessor().question().at(List.of(new Position(distanceM, 0, 0, 0)));
    return reassessed(new Assessor(there), chosen).levels().guarded().leastDb();
  }

  private static double louder(Placement placement, Assessment chosen, double byDb) {
    Question question =
        question(placement)
            .played(
                new SourceLevel(
                    placement.level().atM(),
                    placement.level().peak().plus(byDb),
                    placement.level().longTerm().plus(byDb)))
            .build();
    return reassessed(new Assessor(question), chosen).levels().guarded().leastDb();
  }

  private static Change told(List<Change> changes, String setting, String to) {
    return changes.stream()
        .filter(change -> change.setting().equals(setting) && change.to().equals(to))
        .findFirst()
        .orElseThrow(() -> new AssertionError(setting + " to " + to + " in " + changes));
  }

  private static Change difference(Change told, Assessment from, Assessment fresh) {
    return new Change(
        told.setting(),
        told.to(),
        fresh.levels().guarded().leastDb() - from.levels().guarded().leastDb(),
        fresh.levels().guarded().leastDb() < 0,
        fresh.levels().loudest().gain().setDb() - from.levels().loudest().gain().setDb(),
        fresh.noise().totalDba() - from.noise().totalDba(),
        0,
        0,
        0);
  }

  private static List<Pad> pads(Microphone microphone) {
    List<Pad> pads = new ArrayList<>(microphone.pads());
    pads.add(Pad.OUT);
    return pads;
  }

  private static Assessment assessed(Assessor assessor, Microphone microphone) {
    return chosen(new Adviser(assessor.question()), microphone);
  }

  private static Assessment reassessed(Assessor assessor, Assessment assessment) {
    return assessor.assess(
        assessment.microphone(),
        assessor.view(
            assessment.microphone(), assessment.view().outputId(), assessment.view().pattern()),
        assessment.settings());
  }

  private static Assessment chosen(Question question, Microphone microphone) {
    return chosen(new Adviser(question), microphone);
  }

  private static Assessment chosen(Adviser adviser, Microphone microphone) {
    return adviser.advise(List.of(microphone)).ranked().get(0).assessment();
  }

  private static double cornerHz(Assessment chosen) {
    return chosen.settings().filter().map(f -> f.highPass().cornerHz()).orElse(0.0);
  }

  private static QuestionBuilder question(Placement placement) {
    return aQuestion(placement).at(0.3).diffuse(85);
  }

  private static List<Microphone> numbered(List<Microphone> drawn) {
    List<Microphone> numbered = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      Microphone m = drawn.get(i);
      numbered.add(
          new Microphone(
              "t/m-" + i,
              m.title(),
              m.transducer(),
              m.address(),
              m.diaphragmMm(),
              m.powering(),
              m.sourceImpedanceOhm(),
              m.ratedLoadOhm(),
              m.maximumSpl(),
              m.capsuleLimitDbSpl(),
              m.pads(),
              m.highPasses(),
              m.outputs(),
              m.onAxisResponseDb(),
              m.rejectionCapDb(),
              m.massG(),
              m.lengthMm(),
              m.basis(),
              m.basisOf()));
    }
    return numbered;
  }

  @Provide
  Arbitrary<Microphone> microphones() {
    return Combinators.combine(
            Arbitraries.of(PatternName.values()).set().ofMinSize(1).ofMaxSize(3),
            Arbitraries.doubles().between(1, 40),
            Arbitraries.doubles().between(5, 30),
            Arbitraries.doubles().between(120, 150),
            Arbitraries.of(0.0, 3.0),
            Arbitraries.of(6.0, 10.0, 12.0, 20.0).set().ofMaxSize(2),
            Arbitraries.of(40.0, 80.0, 100.0, 150.0).set().ofMaxSize(2),
            Arbitraries.integers().between(1, 3))
        .as(
            (names, mvPerPa, noiseDba, bearsDb, spreadDb, padsDb, cornersHz, order) -> {
              MicrophoneBuilder builder = MicrophoneBuilder.aMicrophone().bears(bearsDb, spreadDb);
              names.forEach(name -> builder.pattern(name, mvPerPa, noiseDba));
              padsDb.forEach(builder::padBefore);
              cornersHz.forEach(hz -> builder.highPass(hz, order));
              return builder.build();
            });
  }

  @Provide
  Arbitrary<Placement> placements() {
    return placementsOf("point", "sphere", "piston", "incoherent-disc", "shell");
  }

  @Provide
  Arbitrary<Placement> spreadingPlacements() {
    return placementsOf("point", "sphere", "piston", "incoherent-disc");
  }

  private static Arbitrary<Placement> placementsOf(String... radiators) {
    return Combinators.combine(
            Arbitraries.of(radiators),
            Arbitraries.doubles().between(0.02, 0.8),
            Arbitraries.doubles().between(90, 140),
            Arbitraries.doubles().between(0, 9),
            Arbitraries.of(SpectrumClass.values()),
            Arbitraries.of(Purpose.values()),
            Arbitraries.doubles().between(25, 400))
        .as(
            (radiator, radiusM, peakDb, spreadDb, spectrum, purpose, wantedFromHz) ->
                aPlacement()
                    .radiating(Radiator.ofId(radiator, radiusM).orElseThrow())
                    .peak(0.3, peakDb, spreadDb, peakDb - 20)
                    .spectrum(spectrum, wantedFromHz, 12_000)
                    .purpose(purpose)
                    .wantedFrom(wantedFromHz)
                    .build());
  }
}
