package org.standoff.answers.floor;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.Room;
import org.standoff.acoustics.Validity;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.Assumptions;
import org.standoff.answers.Basis;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.floor.Barrier;
import org.standoff.floor.Lining;
import org.standoff.floor.RoomReport;

/** Answers what a room does. */
@ApplicationScoped
public class RoomAnswers {
  private static final String USUAL_MATERIAL = "core/drape-heavy";

  private final AnswerContext context;

  RoomAnswers(AnswerContext context) {
    this.context = context;
  }

  /**
   * Answers a question.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  public RoomAnswer answer(RoomQuestion asked) {
    References references = context.references();
    Assumptions assumptions = new Assumptions();
    Optional<FloorRooms> room =
        FloorRooms.resolve(
            references,
            asked.room(),
            Optional.empty(),
            asked.temperatureC(),
            asked.relativeHumidityPercent(),
            "",
            assumptions);
    List<Lining> linings = linings(references, asked, assumptions);
    references.refuseFaulty();
    Room found = room.orElseThrow().room();
    RoomReport report = RoomReport.of(found, linings);
    return new RoomAnswer(
        room.get().id(),
        found.volumeM3(),
        found.surfaceM2(),
        found.midAbsorptionAreaM2(),
        report.schroederHz(),
        report.decays().stream().map(RoomAnswers::decay).toList(),
        report.criticalDistances().stream().map(RoomAnswers::distance).toList(),
        report.linings().stream().map(RoomAnswers::lining).toList(),
        basis(references, found, report, assumptions));
  }

  private static List<Lining> linings(
      References references, RoomQuestion asked, Assumptions assumptions) {
    List<Double> areas = asked.materialAreaM2() == null ? List.of() : asked.materialAreaM2();
    if (asked.material() == null && areas.isEmpty()) {
      return List.of();
    }
    if (areas.isEmpty()) {
      references.fault(
          QuestionFault.of(
              "/material_area_m2",
              QuestionFault.Kind.MISSING,
              "Say how many square metres of the material."));
    }
    if (asked.material() == null) {
      assumptions.add("the material is taken as %s", USUAL_MATERIAL);
    }
    Optional<Barrier> material =
        (asked.material() == null
                ? references.byId(Barrier.class, USUAL_MATERIAL, "/material")
                : references.resolve(Barrier.class, asked.material(), "/material"))
            .map(Resolved::item);
    return material
        .map(
            of ->
                areas.stream()
                    .map(areaM2 -> new Lining(of.title(), areaM2, of.absorption()))
                    .toList())
        .orElse(List.of());
  }

  private static RoomAnswer.DecayLine decay(RoomReport.Decay decay) {
    return new RoomAnswer.DecayLine(
        decay.octave().label(),
        decay.areaM2(),
        decay.meanAbsorption(),
        decay.sabineS(),
        Told.figure(decay.eyringS()),
        decay.sabineWithAirS(),
        Told.figure(decay.eyringWithAirS()));
  }

  private static RoomAnswer.CriticalDistanceLine distance(RoomReport.CriticalDistance distance) {
    return new RoomAnswer.CriticalDistanceLine(
        distance.pattern(), distance.midM(), Told.octaves(distance.octavesM()));
  }

  private static RoomAnswer.LiningLine lining(RoomReport.LiningEffect effect) {
    return new RoomAnswer.LiningLine(
        effect.lining().title(),
        effect.lining().areaM2(),
        Told.figure(effect.lateChangeDb()),
        Told.octaves(effect.lateChangesDb()),
        effect.decayS(),
        effect.criticalDistanceM());
  }

  private Basis basis(
      References references, Room room, RoomReport report, Assumptions assumptions) {
    List<Validity> validity = new ArrayList<>(report.validity());
    validity.addAll(room.air().validity());
    return new Basis(
        references.catalogue().revision(),
        context.engineVersion(),
        room.air().speedOfSoundMPerS(),
        room.air().speedLaw(),
        assumptions.told(),
        validity,
        List.of(
            "whether the room's data hold the air already: figures with air add it",
            "what material hides where it hangs: its gain is the most that it can be",
            "single modes and echoes: a clap in the room tells them"));
  }
}
