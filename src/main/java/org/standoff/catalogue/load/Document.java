package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * What was read from one file.
 *
 * @param content the file as a tree; what could be read of it where there are faults
 * @param lines where each node of it stands
 * @param faults all that were found
 */
record Document(JsonNode content, Lines lines, List<ReadFault> faults) {
  Document {
    faults = List.copyOf(faults);
  }
}
