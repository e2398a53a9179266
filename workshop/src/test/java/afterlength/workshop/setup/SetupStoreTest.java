package afterlength.workshop.setup;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.EvenPlayCrown;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.StringPull;
import afterlength.craft.setup.StringSpacing;
import afterlength.craft.setup.TemplateCrown;
import afterlength.craft.setup.Waist;
import afterlength.workshop.desk.Typed;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was saved comes back whole, whatever kind of crown and spacing; earlier savings stay. */
class SetupStoreTest {
    private static final BridgeInputs VIOLIN = Bench.violin().inputs();

    @TempDir
    Path folder;

    private SetupShop shop;

    @BeforeEach
    void open() {
        shop = new SetupShop(folder);
    }

    private SetupBench kept(SetupBench bench) {
        shop.setups.save(shop.setup(SetupMoment.AFTER, bench));
        return shop.setups
                .findNow(shop.visit.id(), SetupMoment.AFTER)
                .orElseThrow()
                .bench();
    }

    @Test
    void aPlainBridgeComesBack() {
        SetupBench bench = SetupBench.of(VIOLIN);
        assertThat(kept(bench)).isEqualTo(bench);
    }

    @Test
    void everythingThatMayBeKnownComesBack() {
        BridgeInputs inputs = VIOLIN.change()
                .board(VIOLIN.board().withScoop(new BassTreble(0.8, 0.4)))
                .waist(new Waist(112, 11.5))
                .clearanceConvention(ClearanceConvention.UPRIGHT)
                .crown(new EvenPlayCrown())
                .done();
        SetupBench bench = SetupBench.of(inputs)
                .withTemplate("M0 0 L1 1")
                .withNotes(List.of("G3", "D4", "A4", "E5"))
                .with(BenchReading.AFTER_LENGTH, 54.5)
                .with(BenchReading.BOW_FORCE, 0.8);
        assertThat(kept(bench)).isEqualTo(bench);
    }

    @Test
    void anOwnTemplateAndPlacesStringByStringComeBack() {
        String template = "-20; 0\n0; 5\n20; -1";
        BridgeInputs inputs = VIOLIN.change()
                .crown(new TemplateCrown(TemplateText.read(template).points()))
                .nutSpacing(new StringSpacing.Given(List.of(-8.0, -2.5, 3.0, 8.25)))
                .bridgeSpacing(new StringSpacing.Given(List.of(-16.5, -5.5, 5.5, 17.0)))
                .done();
        SetupBench bench = SetupBench.of(inputs).withTemplate(template);
        assertThat(kept(bench)).isEqualTo(bench);
    }

    @Test
    void aStringKnownByMassAndNoteKeepsItsPullAtTheSavedPitch() {
        FittedString weighed = new FittedString("G", 0.8, new StringPull.DensityAndPitch(2.8, 196.0));
        List<FittedString> strings = List.of(
                weighed,
                VIOLIN.strings().get(1),
                VIOLIN.strings().get(2),
                VIOLIN.strings().get(3));
        SetupBench bench = SetupBench.of(VIOLIN.change().strings(strings).done())
                .withNotes(List.of("G3", "", "", ""))
                .with(BenchReading.A4, 442);
        StringPull pull = kept(bench).inputs().strings().get(0).pull();
        // G3 lies fourteen semitones under the a: 442 Hz / 2^(14/12) = 196.89 Hz
        assertThat(pull).isInstanceOfSatisfying(StringPull.DensityAndPitch.class, known -> {
            assertThat(known.linearDensity_g_m()).isEqualTo(2.8);
            assertThat(known.frequency_Hz()).isEqualTo(442 / Math.pow(2, 14 / 12.0));
        });
    }

    @Test
    void aLaterSavingHoldsAndTheEarlierStays() {
        kept(SetupBench.of(VIOLIN));
        kept(SetupBench.of(VIOLIN.change().projection_mm(26.5).done()));
        assertThat(shop.setups.listHistory(shop.visit.id()))
                .extracting(setup -> setup.inputs().projection_mm())
                .containsExactly(27.0, 26.5);
        assertThat(shop.setups
                        .findNow(shop.visit.id(), SetupMoment.AFTER)
                        .orElseThrow()
                        .inputs()
                        .projection_mm())
                .isEqualTo(26.5);
    }

    @Test
    void theNextVisitStartsFromTheLatestSavingOfTheInstrument() {
        kept(SetupBench.of(VIOLIN));
        assertThat(shop.setups.findEarlier(shop.visit.instrumentId(), shop.visit.id()))
                .isEmpty();
        assertThat(shop.setups.findEarlier(shop.visit.instrumentId(), shop.visit.id() + 1))
                .hasValueSatisfying(setup -> assertThat(setup.bench()).isEqualTo(SetupBench.of(VIOLIN)));
    }

    @Test
    void whatWasTypedIsTypedAgainWithoutLoss() {
        SetupBench bench = SetupBench.of(VIOLIN).with(BenchReading.AFTER_LENGTH, 54.5);
        Typed typed = Typed.known(SetupTyped.of(bench));
        assertThat(SetupForm.read(typed)).isEqualTo(bench);
        assertThat(typed.problems()).isEmpty();
    }
}
