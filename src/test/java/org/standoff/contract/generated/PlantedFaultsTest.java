package org.standoff.contract.generated;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The generated requests find what they are for, and nothing where nothing is wrong. */
class PlantedFaultsTest {
  private static final long SEED = 7;
  private static final int CHANGES = 400;

  private static final Credentials NORTH =
      new Credentials() {
        @Override
        public Optional<String> good(Api.Operation operation) {
          return Optional.of("north");
        }

        @Override
        public Optional<String> expired(Api.Operation operation) {
          return Optional.of("old");
        }

        @Override
        public Optional<String> foreign(Api.Operation operation) {
          return Optional.of("south");
        }

        @Override
        public Call uponItsOwn(Api.Operation operation, Call call) {
          return operation.id().equals("deleteThing") ? call.renamed(spare(spares++)) : call;
        }
      };

  /** How many things are there to be taken away, one by one. */
  private static int spares;

  private static final Api API = Api.of(StandInService.DESCRIPTION);
  private static final List<Case> CASES = cases();

  /** What is read and changed is there to begin with. */
  private static final Call THING =
      Base.of(
              API.operation("/houses/{house}/things/{thing}", "PUT").orElseThrow(),
              new Values(API),
              NORTH)
          .get(0)
          .call()
          .with("Authorization", "Bearer north");

  @Test
  void aServiceThatKeepsItsDescriptionHasNoFindings() {
    assertThat(findings(null)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(StandInService.Plant.class)
  void aPlantedFaultIsFoundAsWhatItIs(StandInService.Plant plant) {
    List<Finding> findings = findings(plant);
    assertThat(findings).extracting(Finding::kind).contains(plant.found());
    assertThat(findings).allSatisfy(finding -> assertThat(finding.curl()).startsWith("curl -i "));
  }

  private static List<Finding> findings(StandInService.Plant plant) {
    StandInService service = new StandInService(plant);
    service.send(THING);
    for (int i = 0; i < spares; i++) {
      service.send(THING.renamed(spare(i)));
    }
    try (Run run = new Run(service, new Judge(API, "http://stand-in"), 1)) {
      Lives lives = new Lives(API, NORTH, SEED, run);
      run.send(CASES);
      lives.all();
      return run.findings();
    }
  }

  private static Map<String, String> spare(int number) {
    return Map.of("t1", "spare-" + number);
  }

  private static List<Case> cases() {
    Cases cases = new Cases(API, NORTH, SEED, CHANGES);
    List<Case> all = new ArrayList<>();
    for (Api.Operation operation : API.operations()) {
      all.addAll(cases.fixed(operation));
      Iterator<Case> changed = cases.changed(operation);
      for (int i = 0; i < CHANGES && changed.hasNext(); i++) {
        all.add(changed.next());
      }
    }
    return all;
  }
}
