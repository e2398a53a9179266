package afterlength.planner.engine;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.planner.project.Project;
import afterlength.planner.project.Project.Distance;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Projects that cannot be done are reported as such, with the reason. */
class ContradictionTest {
    private static final Effort EFFORT = Effort.ofLayings(50);

    private static Project two(int demand, Distance... distances) {
        return new Project(
                List.of(0, 5, 5, 0),
                List.of(List.of(0), List.of(demand), List.of(2), List.of(0)),
                List.of(3),
                List.of(distances));
    }

    @Test
    void aCircleOfDistances() {
        Project project = two(1, new Distance(1, 2, 7), new Distance(2, 1, -6));
        assertThat(ProjectPlanner.plan(project, EFFORT))
                .isEqualTo(new ProjectAnswer.Impossible("its longest and shortest distances contradict each other"));
    }

    @Test
    void twoThatMayNotOverlapAndHaveNoRoomSideBySide() {
        Project project = two(2, new Distance(1, 2, -4), new Distance(2, 1, -4));
        assertThat(ProjectPlanner.plan(project, EFFORT))
                .isEqualTo(
                        new ProjectAnswer.Impossible(
                                "whatever the order of the activities that cannot go on at once, a longest distance is broken"));
    }

    @Test
    void moreThanThereIs() {
        assertThat(ProjectPlanner.plan(two(4), EFFORT))
                .isEqualTo(new ProjectAnswer.Impossible("activity 1 needs 4 of resource 1, and there is 3"));
    }

    @Test
    void withRoomThereIsAPlan() {
        Project project = two(2, new Distance(1, 2, -5), new Distance(2, 1, -5));
        assertThat(ProjectPlanner.plan(project, EFFORT)).isEqualTo(new ProjectAnswer.Made(10, List.of(0, 0, 5, 10), 7));
    }
}
