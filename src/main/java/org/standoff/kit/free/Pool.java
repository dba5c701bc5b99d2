package org.standoff.kit.free;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The lines of a question that draw on the same shelves: those of one model.
 *
 * @param microphone the model
 * @param matchedLines places of the lines that want a group, by its size
 * @param looseLines places of the other lines
 * @param looseDemand units that those want together
 */
record Pool(
    String microphone,
    TreeMap<Integer, List<Integer>> matchedLines,
    List<Integer> looseLines,
    int looseDemand) {

  /** The pools of a question, in the order in which their models are first named. */
  static List<Pool> of(List<WantedLine> lines) {
    Map<String, List<Integer>> byModel = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      byModel.computeIfAbsent(lines.get(i).microphone(), model -> new ArrayList<>()).add(i);
    }
    List<Pool> pools = new ArrayList<>();
    byModel.forEach((microphone, places) -> pools.add(of(microphone, places, lines)));
    return pools;
  }

  private static Pool of(String microphone, List<Integer> places, List<WantedLine> lines) {
    TreeMap<Integer, List<Integer>> matched = new TreeMap<>();
    List<Integer> loose = new ArrayList<>();
    int demand = 0;
    for (int place : places) {
      WantedLine line = lines.get(place);
      if (line.matched()) {
        matched.computeIfAbsent(line.quantity(), size -> new ArrayList<>()).add(place);
      } else {
        loose.add(place);
        demand += line.quantity();
      }
    }
    return new Pool(microphone, matched, loose, demand);
  }
}
