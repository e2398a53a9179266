package afterlength.start.demo;

import afterlength.workshop.agreement.AccessStore;
import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.ClampStore;
import afterlength.workshop.agreement.TreatmentStore;
import afterlength.workshop.climate.ClimateStore;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.MarkStore;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.PhotographIntake;
import afterlength.workshop.glue.GlueStore;
import afterlength.workshop.handover.HandoverStore;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.plan.BenchPlans;
import afterlength.workshop.retouch.PaletteStore;
import afterlength.workshop.retouch.RetouchStore;
import afterlength.workshop.retouch.VarnishStore;
import afterlength.workshop.setup.SetupStore;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.MaterialStore;
import afterlength.workshop.work.StepStore;

/** The stores of a shop that is being filled, and the clock that they ask. */
public record DemoStores(
        DemoClock clock,
        SettingsStore settings,
        VisitStore visits,
        PhotographIntake photographs,
        FindingStore findings,
        MarkStore marks,
        MeasureStore measures,
        TreatmentStore treatments,
        AgreementStore agreements,
        AccessStore access,
        ClampStore clamps,
        StepStore steps,
        DiaryStore diary,
        MaterialStore materials,
        BenchPlans plans,
        ClimateStore climate,
        Photographs loggerFiles,
        GlueStore glue,
        SetupStore setups,
        PaletteStore palette,
        RetouchStore retouches,
        VarnishStore varnishes,
        HandoverStore handovers) {}
