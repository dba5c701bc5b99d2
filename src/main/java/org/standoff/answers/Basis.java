package org.standoff.answers;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.Validity;

/**
 * What an answer rests on.
 *
 * @param catalogueRevision revision of the catalogue that was used
 * @param kitRevision state of the kit, where the question asked for what is free
 * @param engineVersion version of the calculation
 * @param speedOfSoundMPerS speed of sound that was used, in m/s
 * @param speedOfSoundLaw the law that it follows from
 * @param assumptions what the question left open and how it was filled
 * @param validity where a law is used outside its range, or is an assumption by itself
 * @param unknowns what the model can't know
 */
public record Basis(
    String catalogueRevision,
    Optional<String> kitRevision,
    String engineVersion,
    @JsonProperty("speed_of_sound_m_per_s") double speedOfSoundMPerS,
    String speedOfSoundLaw,
    List<String> assumptions,
    List<Validity> validity,
    List<String> unknowns) {
  public Basis {
    assumptions = List.copyOf(assumptions);
    validity = List.copyOf(validity);
    unknowns = List.copyOf(unknowns);
  }

  /** What an answer rests on that asks the catalogue alone. */
  public Basis(
      String catalogueRevision,
      String engineVersion,
      double speedOfSoundMPerS,
      String speedOfSoundLaw,
      List<String> assumptions,
      List<Validity> validity,
      List<String> unknowns) {
    this(
        catalogueRevision,
        Optional.empty(),
        engineVersion,
        speedOfSoundMPerS,
        speedOfSoundLaw,
        assumptions,
        validity,
        unknowns);
  }

  /** The same, and a state of the kit where there is one. */
  public Basis with(Optional<String> revision) {
    return new Basis(
        catalogueRevision,
        revision,
        engineVersion,
        speedOfSoundMPerS,
        speedOfSoundLaw,
        assumptions,
        validity,
        unknowns);
  }
}
