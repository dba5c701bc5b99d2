package org.standoff.pairs.fit;

import java.util.ArrayList;
import java.util.List;
import org.standoff.acoustics.Room;
import org.standoff.pairs.DirectToReverberant;
import org.standoff.pairs.Pair;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;
import org.standoff.pairs.listening.ListeningModel;

/** A candidate set up in one way after the other, and what the players sound like through it. */
record Trial(FitQuestion question, Candidate candidate) {
  Pair pair(Setting setting) {
    return candidate
        .layout()
        .pair(
            setting.measures(),
            candidate.pattern().polar(),
            candidate.rejectionCapDb(),
            question.stand().at(setting.distanceM()));
  }

  PairHearing hearing(Setting setting) {
    return PairHearing.of(pair(setting), question.air());
  }

  /** Half the way from the rightmost to the leftmost image by the solving model, in per cent. */
  double fillPct(Setting setting) {
    PairHearing hearing = hearing(setting);
    ListeningModel model = question.solvingModel();
    double most = -ListeningModel.SIDE_PCT;
    double least = ListeningModel.SIDE_PCT;
    for (PicturedPlayer player : question.players()) {
      StereoDifferences heard = hearing.sweeping(new SoundOrigin.InRoom(player.position()));
      double position = model.imagePct(heard.levelDb(), heard.timeMs()).orElseThrow();
      most = Math.max(most, position);
      least = Math.min(least, position);
    }
    return (most - least) / 2;
  }

  /** Mean over players and channels of direct over reverberant, in dB. */
  double roomDb(Setting setting, Room room) {
    PairHearing hearing = hearing(setting);
    return question.players().stream()
        .flatMap(player -> DirectToReverberant.of(hearing, player.position(), room, 1).stream())
        .mapToDouble(DirectToReverberant::midDb)
        .average()
        .orElseThrow();
  }

  /** The knobs in the orders in which they are worth turning: each measure once comes first. */
  List<List<Knob>> orders(Knob distance) {
    List<Knob> measures = Knob.ofLayout(candidate.layout(), question.barMostM());
    return measures.size() < 2
        ? List.of(with(measures, distance))
        : List.of(
            with(measures, distance), with(List.of(measures.get(1), measures.get(0)), distance));
  }

  private static List<Knob> with(List<Knob> measures, Knob distance) {
    List<Knob> all = new ArrayList<>(measures);
    if (distance.range().isFree()) {
      all.add(distance);
    }
    return List.copyOf(all);
  }
}
