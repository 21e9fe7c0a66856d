package org.lagwright.ifc.extract.graph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

class SideSearchTest {

  private static final Section MAIN = new Section.Round(0.1);
  private static final Section BRANCH = new Section.Round(0.05);

  /** Pieces are numbers here; counts what is looked at more closely. */
  private static final class Counting extends SideSearch<Integer> {
    int looks;

    Counting() {
      super(0.002);
    }

    @Override
    public boolean mayMeet(Integer branch, Integer main) {
      looks++;
      return true;
    }

    @Override
    public boolean maySitAround(Integer piece) {
      return true;
    }

    @Override
    public ElementKey key(Integer piece) {
      return new ElementKey(0, piece);
    }
  }

  private static SideSearch.Main<Integer> main(int piece, Point from, Point to) {
    return new SideSearch.Main<>(piece, Kind.PIPE_SEGMENT, Axis.between(from, to), MAIN);
  }

  @Test
  void storeysAboveEachOtherAreNotLookedAtTogether() {
    int storeys = 100;
    Counting search = new Counting();
    for (int i = 0; i < storeys; i++) {
      search.add(
          new SideSearch.Loose<>(
              i, Kind.PIPE_SEGMENT, new Point(5, 0.05, 3.5 * i), new Point(0, -1, 0), BRANCH));
    }
    List<SideSearch.Meeting<Integer>> found = new ArrayList<>();
    for (int i = 0; i < storeys; i++) {
      Point from = new Point(0, 0, 3.5 * i);
      search.lookAlong(main(1000 + i, from, new Point(10, 0, 3.5 * i)), found);
    }

    assertThat(found).hasSize(storeys);
    assertThat(found).allMatch(each -> each.main().piece() == 1000 + each.branch().piece());
    assertThat(search.looks).isLessThanOrEqualTo(2 * storeys);
  }

  @Test
  void riserFindsTheBranchesOfAllStoreysAndWhereOneSlabEnds() {
    Counting search = new Counting();
    for (int i = 1; i < 40; i++) {
      search.add(
          new SideSearch.Loose<>(
              i, Kind.PIPE_SEGMENT, new Point(0.05, 0, 1.5 * i), new Point(-1, 0, 0), BRANCH));
    }
    List<SideSearch.Meeting<Integer>> found = new ArrayList<>();
    search.lookAlong(main(1000, new Point(0, 0, 0), new Point(0, 0, 60)), found);

    assertThat(found).hasSize(39);
  }

  /** What is computed far from zero is rounded in its last digits. */
  @ParameterizedTest
  @CsvSource({"0.1,0", "0.1000000001,0", "0.12,1"})
  void whatLiesAroundAPipeIsWiderThanIt(double diameterM, int meetings) {
    Counting search = new Counting();
    search.add(
        new SideSearch.Loose<>(
            1, Kind.VALVE, new Point(5, 0, 0), new Point(1, 0, 0), new Section.Round(diameterM)));
    List<SideSearch.Meeting<Integer>> found = new ArrayList<>();
    search.lookAlong(main(1000, new Point(0, 0, 0), new Point(10, 0, 0)), found);

    assertThat(found).hasSize(meetings);
  }
}
