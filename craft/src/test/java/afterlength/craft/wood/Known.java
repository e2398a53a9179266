package afterlength.craft.wood;

import static org.assertj.core.api.Assertions.assertThat;

/** Answers that a test expects to hold a number. */
final class Known {
    private Known() {}

    static EquilibriumMoisture.Value moisture(EquilibriumMoisture answer) {
        assertThat(answer).isInstanceOf(EquilibriumMoisture.Value.class);
        return (EquilibriumMoisture.Value) answer;
    }

    static EquilibriumHumidity.Value humidity(EquilibriumHumidity answer) {
        assertThat(answer).isInstanceOf(EquilibriumHumidity.Value.class);
        return (EquilibriumHumidity.Value) answer;
    }
}
