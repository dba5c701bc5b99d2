package org.standoff.answers.kit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.ItemId;
import org.standoff.chain.DirectBox;
import org.standoff.chain.Microphone;
import org.standoff.kit.Period;
import org.standoff.kit.free.Alternatives;
import org.standoff.kit.free.AtTheDoor;
import org.standoff.kit.free.FreeKit;
import org.standoff.kit.free.FreeReport;
import org.standoff.kit.free.Splits;
import org.standoff.kit.free.WantedLine;
import org.standoff.kit.hold.Expiry;
import org.standoff.kit.hold.HoldWish;
import org.standoff.kit.house.HouseTerms;

/** Answers what is free, where else, when, for how much, and what could stand in. */
@ApplicationScoped
public class Availability {
  /** Units of one model that one question may want. */
  private static final int MOST_OF_A_MODEL = 200;

  private final AnswerContext context;
  private final AskedHouses askedHouses;
  private final FreeKit freeKit;
  private final Expiry expiry;

  Availability(AnswerContext context, AskedHouses askedHouses, FreeKit freeKit, Expiry expiry) {
    this.context = context;
    this.askedHouses = askedHouses;
    this.freeKit = freeKit;
    this.expiry = expiry;
  }

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   * @throws org.standoff.kit.DatabaseLost where the database is not there
   */
  public AvailabilityAnswer answer(AvailabilityQuestion asked) {
    References references = context.references();
    List<WantedLine> lines = lines(references, asked);
    refuseTooMany(references, lines);
    Looked looked = look(references, asked, lines);
    LinesAtHouses found = found(looked);
    Splits splits =
        new Splits(
            lines,
            looked.houses().stream()
                .filter(house -> AtTheDoor.of(house, looked.period()).possible())
                .toList(),
            looked.report().lines().stream().map(FreeReport.LineAtHouse::shelf).toList(),
            looked.period());
    AvailabilityViews views = looked.views();
    return new AvailabilityAnswer(
        looked.report().revision(),
        looked.report().asOf(),
        looked.report().asOf().plus(HoldWish.USUAL_LIFETIME),
        looked.period().from(),
        looked.period().to(),
        found.houses(),
        found.lines(),
        views.way(splits.fewestHouses()),
        splits.cheapest().stream().map(views::way).toList(),
        references.catalogue().revision(),
        context.engineVersion());
  }

  /**
   * Answers a question as far as each line is looked at as if it were the only one, so that any
   * number of units may be wanted together.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   * @throws org.standoff.kit.DatabaseLost where the database is not there
   */
  public LinesAtHouses lineByLine(AvailabilityQuestion asked) {
    References references = context.references();
    return found(look(references, asked, lines(references, asked)));
  }

  private record Looked(
      List<WantedLine> lines,
      Period period,
      List<HouseTerms> houses,
      FreeReport report,
      Substitutes substitutes,
      int substituteCount) {

    AvailabilityViews views() {
      return new AvailabilityViews(lines, period);
    }
  }

  private Looked look(References references, AvailabilityQuestion asked, List<WantedLine> lines) {
    Optional<Period> period = AskedPeriods.resolve(references, asked.from(), asked.to(), "");
    List<HouseTerms> houses = askedHouses.resolve(references, asked.houses(), "/houses");
    references.refuseFaulty();
    int substituteCount =
        asked.substituteCount() == null
            ? AvailabilityQuestion.USUAL_SUBSTITUTES
            : asked.substituteCount();
    Substitutes substitutes = new Substitutes(references.catalogue());
    // what falls may be for those who wait, and not for who asks
    expiry.settleUnlessBusy();
    FreeReport report =
        freeKit.find(
            lines,
            period.orElseThrow(),
            houses,
            substituteCount > 0 ? substitutes : Alternatives.NONE);
    refuseUnknown(references, lines, report, asked.lines() != null);
    return new Looked(lines, period.get(), houses, report, substitutes, substituteCount);
  }

  private static List<WantedLine> lines(References references, AvailabilityQuestion asked) {
    if ((asked.microphone() == null) == (asked.lines() == null)) {
      references.fault(
          QuestionFault.of(
              asked.lines() == null ? "/microphone" : "/lines",
              asked.lines() == null ? QuestionFault.Kind.MISSING : QuestionFault.Kind.CONTRADICTION,
              "Give microphone or lines, one of them."));
      return List.of();
    }
    if (asked.microphone() != null) {
      return List.of(new AskedLine(asked.microphone(), asked.quantity(), asked.matched()).wanted());
    }
    if (asked.quantity() != null || asked.matched() != null) {
      references.fault(
          QuestionFault.of(
              asked.quantity() == null ? "/matched" : "/quantity",
              QuestionFault.Kind.CONTRADICTION,
              "Each line says this for itself."));
    }
    return asked.lines().stream().map(AskedLine::wanted).toList();
  }

  /** Ways to get all of it are sought among all units of a model at once. */
  private static void refuseTooMany(References references, List<WantedLine> lines) {
    Map<String, Integer> ofModel = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      int sum = ofModel.merge(lines.get(i).microphone(), lines.get(i).quantity(), Integer::sum);
      if (sum > MOST_OF_A_MODEL) {
        references.fault(
            QuestionFault.of(
                    "/lines/" + i + "/quantity",
                    QuestionFault.Kind.OUT_OF_RANGE,
                    "The lines want too many units of this model.")
                .found(sum)
                .allowed("at most " + MOST_OF_A_MODEL + " units of a model"));
      }
    }
  }

  /** What no catalogue knows and no house has is a slip of the pen. */
  private static void refuseUnknown(
      References references, List<WantedLine> lines, FreeReport report, boolean listed) {
    Catalogue catalogue = references.catalogue();
    for (int i = 0; i < lines.size(); i++) {
      int line = i;
      String model = lines.get(i).microphone();
      boolean owned =
          report.lines().stream()
              .anyMatch(one -> one.line() == line && one.shelf().unitCount() > 0);
      boolean known =
          ItemId.parse(model)
              .map(
                  id ->
                      catalogue.find(Microphone.class, id).isPresent()
                          || catalogue.find(DirectBox.class, id).isPresent())
              .orElse(false);
      if (!owned && !known) {
        references.fault(
            QuestionFault.of(
                    listed ? "/lines/" + i + "/microphone" : "/microphone",
                    QuestionFault.Kind.UNKNOWN_ITEM,
                    "Neither the catalogue nor a house asked has a microphone of this id.")
                .found(model)
                .suggestion(catalogue.suggest(Microphone.class, model)));
      }
    }
    references.refuseFaulty();
  }

  private static LinesAtHouses found(Looked looked) {
    AvailabilityViews views = looked.views();
    List<AvailabilityAnswer.LineFound> lines = new ArrayList<>();
    for (int i = 0; i < looked.lines().size(); i++) {
      int line = i;
      lines.add(
          views.line(
              line,
              looked.report().lines().stream()
                  .filter(one -> one.line() == line)
                  .map(one -> views.atHouse(one, substitutes(looked, one)))
                  .toList()));
    }
    return new LinesAtHouses(looked.houses().stream().map(views::house).toList(), lines);
  }

  private static List<Substitute> substitutes(Looked looked, FreeReport.LineAtHouse one) {
    return one.enough()
        ? List.of()
        : looked
            .substitutes()
            .of(
                looked.report().shelves(),
                one.wanted(),
                Substitutes.besides(looked.lines(), one.line()),
                one.house().id(),
                looked.substituteCount());
  }
}
