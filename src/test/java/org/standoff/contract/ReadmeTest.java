package org.standoff.contract;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.ExampleCaller;
import org.standoff.fixture.ScenarioHouses;

/**
 * Every call in README.md that is followed by an output gives that output. {@code
 * -Dstandoff.rewrite=true} writes what is true now.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final Pattern CALL =
      Pattern.compile(
          "```sh\n((?:curl|STANDOFF_TOKEN=) ?[^`]*?)\n```\n\n```(json|text|csv)\n([^`]*?)\n?```");
  private static final int LEAST_CALLS = 15;

  @BeforeEach
  @AfterEach
  void theHousesOfTheDemoAreNotThere() {
    ScenarioHouses.forget();
  }

  @Test
  void everyWorkedCallGivesTheOutputThatIsShown() throws IOException {
    if (!ExampleCaller.canRun()) {
      ScenarioHouses.ofTheDemo();
    }
    String readme = Files.readString(README);
    StringBuilder now = new StringBuilder();
    Matcher call = CALL.matcher(readme);
    int calls = 0;
    while (call.find()) {
      calls++;
      String output = output(call.group(1), call.group(3));
      String block =
          "```sh\n" + call.group(1) + "\n```\n\n```" + call.group(2) + "\n" + output + "\n```";
      call.appendReplacement(now, Matcher.quoteReplacement(block));
    }
    call.appendTail(now);
    assertThat(calls).as("worked calls in README.md").isGreaterThanOrEqualTo(LEAST_CALLS);
    if (Boolean.getBoolean("standoff.rewrite")) {
      Files.writeString(README, now);
    } else {
      assertThat(readme)
          .as("README.md, rewritten by: mvn test -Dtest=ReadmeTest -Dstandoff.rewrite=true")
          .isEqualTo(now.toString());
    }
  }

  /** Without Python what its callers print is left as it is. */
  private static String output(String command, String before) {
    if (command.startsWith("curl")) {
      return new ReadmeCall(command).output();
    }
    return ExampleCaller.canRun() ? ReadmeCall.outputOfCaller(command) : before;
  }
}
