package org.standoff.answers.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.standoff.answers.Assumptions;
import org.standoff.answers.ChosenPlayers;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.floor.Barrier;
import org.standoff.floor.FloorFault;
import org.standoff.floor.FloorPlan;
import org.standoff.floor.PlacedBarrier;

/** Resolves a floor against one catalogue snapshot. */
final class FloorResolver {
  private final References references;
  private final AskedFloor asked;
  private final Assumptions assumptions = new Assumptions();

  private FloorResolver(References references, AskedFloor asked) {
    this.references = references;
    this.asked = asked;
  }

  /**
   * Resolves a floor that computes.
   *
   * @throws org.standoff.answers.UnanswerableQuestion with every fault that was found
   */
  static ResolvedFloor resolve(References references, AskedFloor asked) {
    return new FloorResolver(references, asked).resolve();
  }

  private ResolvedFloor resolve() {
    ChosenPlayers players =
        ChosenPlayers.resolve(
            references,
            asked.ensemble(),
            asked.players(),
            AskedFloor.POINTER,
            AskedFloor.POINTER + "/players");
    Optional<FloorRooms> room =
        FloorRooms.resolve(
            references,
            asked.room(),
            players.roomId(),
            asked.temperatureC(),
            asked.relativeHumidityPercent(),
            AskedFloor.POINTER,
            assumptions);
    List<ResolvedFloor.Source> sources =
        new SourcesOnFloor(references, asked, assumptions).resolve(players);
    List<ResolvedFloor.Microphone> microphones =
        new MicrophonesOnFloor(references, assumptions, sources).resolve(asked.microphones());
    List<PlacedBarrier> barriers = barriers();
    references.refuseFaulty();
    FloorPlan plan =
        new FloorPlan(
            room.orElseThrow().room(),
            room.get().equivalentBox(),
            sources.stream().map(ResolvedFloor.Source::floor).toList(),
            microphones.stream().map(ResolvedFloor.Microphone::floor).toList(),
            barriers);
    refuseImpossible(plan, sources, microphones);
    return new ResolvedFloor(
        plan,
        room.get().id(),
        sources,
        microphones,
        barriers.stream().map(placed -> placed.barrier().id()).toList(),
        asked.radiation() == null ? Radiation.AS_DESCRIBED : asked.radiation(),
        assumptions);
  }

  private List<PlacedBarrier> barriers() {
    List<PlacedBarrier> placed = new ArrayList<>();
    List<StandingBarrier> standing = asked.barriers() == null ? List.of() : asked.barriers();
    for (int i = 0; i < standing.size(); i++) {
      StandingBarrier one = standing.get(i);
      references
          .resolve(Barrier.class, one.barrier(), AskedFloor.POINTER + "/barriers/" + i + "/barrier")
          .map(Resolved::item)
          .map(one.place()::of)
          .ifPresent(placed::add);
    }
    return placed;
  }

  /** A source and a microphone may have one name, so what is wrong is asked of each for itself. */
  private void refuseImpossible(
      FloorPlan plan,
      List<ResolvedFloor.Source> sources,
      List<ResolvedFloor.Microphone> microphones) {
    List<FloorFault> ofSources = plan.with(List.of()).faults();
    List<FloorFault> ofMicrophones = new ArrayList<>(plan.faults());
    ofSources.forEach(ofMicrophones::remove);
    ofSources.forEach(
        fault ->
            refuse(fault, sources, source -> source.floor().id(), ResolvedFloor.Source::pointer));
    ofMicrophones.forEach(
        fault ->
            refuse(
                fault,
                microphones,
                microphone -> microphone.floor().id(),
                ResolvedFloor.Microphone::pointer));
    references.refuseFaulty();
  }

  private <T> void refuse(
      FloorFault fault, List<T> all, Function<T, String> id, Function<T, String> pointer) {
    List<String> pointers =
        all.stream().filter(one -> id.apply(one).equals(fault.subject())).map(pointer).toList();
    boolean twice = fault.code().equals("same-id-twice");
    // of two with one name the later is the one to rename
    String at = pointers.get(twice ? pointers.size() - 1 : 0);
    references.fault(
        QuestionFault.of(
                at + (twice ? "/id" : "/position_m"),
                twice ? QuestionFault.Kind.CONTRADICTION : QuestionFault.Kind.OUT_OF_RANGE,
                fault.subject() + ": " + fault.detail() + ".")
            .found(fault.found())
            .allowed(fault.allowed()));
  }
}
