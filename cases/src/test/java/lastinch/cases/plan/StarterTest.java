package lastinch.cases.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StarterTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Starter.class)
  void every_starter_is_a_sound_plan(Starter starter) {
    ReadResult result = new Bench(folder).read(starter.text());
    assertThat(Bench.problems(result)).isEmpty();
    assertThat(Bench.lines(result.notes())).isEmpty();
  }

  @Test
  void a_starter_is_found_by_its_name_with_spaces_or_dashes() {
    assertThat(Starter.named("Sand-flat")).contains(Starter.SAND_FLAT);
    assertThat(Starter.named("sand upright")).contains(Starter.SAND_UPRIGHT);
    assertThat(Starter.named("hull")).isEmpty();
  }
}
