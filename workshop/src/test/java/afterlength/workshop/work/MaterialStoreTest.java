package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.desk.NotHere;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MaterialStoreTest {
    private static final Material GLUE = new Material(0, "Hide glue", "glue", "7", "water and warmth", "", false, 1);

    @TempDir
    Path folder;

    private MaterialStore materials;

    @BeforeEach
    void aShelf() {
        materials = new Shop(folder).materials;
    }

    @Test
    void aMaterialIsPutAwayAndTakenBack() {
        Material kept = materials.add(GLUE);
        assertThat(materials.list()).containsExactly(kept);
        materials.putAway(kept.id());
        assertThat(materials.list()).isEmpty();
        assertThat(materials.listPutAway()).extracting(Material::name).containsExactly("Hide glue");
        materials.takeBack(kept.id());
        assertThat(materials.list()).extracting(Material::name).containsExactly("Hide glue");
    }

    @Test
    void aChangeFromAnOldFormIsRefused() {
        Material kept = materials.add(GLUE);
        Material changed =
                new Material(kept.id(), "Hide glue", "glue", "8", "water and warmth", "", false, kept.version());
        assertThat(materials.change(changed)).isTrue();
        assertThat(materials.change(changed)).isFalse();
        assertThat(materials.get(kept.id()).batch()).isEqualTo("8");
    }

    @Test
    void whatIsNotThereSaysSo() {
        assertThatThrownBy(() -> materials.get(5))
                .isInstanceOf(NotHere.class)
                .hasMessage("There is no material 5 in this shop.");
    }
}
