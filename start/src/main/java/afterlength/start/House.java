package afterlength.start;

import afterlength.start.demo.DemoClock;
import afterlength.start.demo.DemoStores;
import afterlength.workshop.agreement.AccessPages;
import afterlength.workshop.agreement.AccessStore;
import afterlength.workshop.agreement.AgreementChapter;
import afterlength.workshop.agreement.AgreementPages;
import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.ClampPages;
import afterlength.workshop.agreement.ClampStore;
import afterlength.workshop.agreement.CleatSheets;
import afterlength.workshop.agreement.FindingLines;
import afterlength.workshop.agreement.PracticeStore;
import afterlength.workshop.agreement.Proposals;
import afterlength.workshop.agreement.TreatmentPages;
import afterlength.workshop.agreement.TreatmentStore;
import afterlength.workshop.climate.ClimatePages;
import afterlength.workshop.climate.ClimateStore;
import afterlength.workshop.desk.Desk;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.SourcesPages;
import afterlength.workshop.examination.Air;
import afterlength.workshop.examination.CardPages;
import afterlength.workshop.examination.CardPrintStore;
import afterlength.workshop.examination.CardSearches;
import afterlength.workshop.examination.ConditionReports;
import afterlength.workshop.examination.ExaminationChapter;
import afterlength.workshop.examination.FindingPages;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.MarkActions;
import afterlength.workshop.examination.MarkFiles;
import afterlength.workshop.examination.MarkGrounds;
import afterlength.workshop.examination.MarkPages;
import afterlength.workshop.examination.MarkStore;
import afterlength.workshop.examination.MeasurePages;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.PhotographIntake;
import afterlength.workshop.examination.PhotographPages;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.examination.PictureRoom;
import afterlength.workshop.examination.ReportPages;
import afterlength.workshop.examination.RoomAir;
import afterlength.workshop.examination.SittingPages;
import afterlength.workshop.examination.SittingStore;
import afterlength.workshop.examination.SmallPictures;
import afterlength.workshop.examination.VisitHome;
import afterlength.workshop.glue.GluePages;
import afterlength.workshop.glue.GlueStore;
import afterlength.workshop.glue.PotTimers;
import afterlength.workshop.handover.FinalReports;
import afterlength.workshop.handover.HandoverChapter;
import afterlength.workshop.handover.HandoverPages;
import afterlength.workshop.handover.HandoverStore;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.InstrumentPages;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.ReceivePages;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.plan.BenchPlans;
import afterlength.workshop.plan.PlanAgreed;
import afterlength.workshop.plan.PlanAhead;
import afterlength.workshop.plan.PlanReadyBy;
import afterlength.workshop.plan.PlanRoom;
import afterlength.workshop.retouch.CaseDesk;
import afterlength.workshop.retouch.CoatStore;
import afterlength.workshop.retouch.PalettePages;
import afterlength.workshop.retouch.PaletteStore;
import afterlength.workshop.retouch.RetouchChapter;
import afterlength.workshop.retouch.RetouchPages;
import afterlength.workshop.retouch.RetouchStore;
import afterlength.workshop.retouch.VarnishPages;
import afterlength.workshop.retouch.VarnishStore;
import afterlength.workshop.retouch.WornAreaPages;
import afterlength.workshop.retouch.WornAreaStore;
import afterlength.workshop.setup.BridgePapers;
import afterlength.workshop.setup.BridgeSheets;
import afterlength.workshop.setup.SetupChapter;
import afterlength.workshop.setup.SetupPages;
import afterlength.workshop.setup.SetupStart;
import afterlength.workshop.setup.SetupStore;
import afterlength.workshop.work.AgreedSteps;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.MaterialStore;
import afterlength.workshop.work.StepStore;
import afterlength.workshop.work.WorkChapter;
import afterlength.workshop.work.WorkRoom;
import java.time.Clock;
import java.util.List;

/** One shop, wired: its stores, and the pages over them. Stages are named in the order of the job. */
final class House {
    final SettingsStore settings;
    final OwnerStore owners;
    final InstrumentStore instruments;
    final VisitStore visits;
    final FindingLines findingLines;
    final TreatmentStore treatments;
    final AgreementStore agreements;
    final AccessStore accessStudies;
    final ClampStore clamps;
    final CleatSheets cleatSheets;
    final Proposals proposals;
    final StepStore steps;
    final DiaryStore diary;
    final MaterialStore materials;
    final BenchPlans plans;
    private final PlanAgreed planAgreed;
    final Photographs originals;
    final SmallPictures smallPictures;
    final PhotographStore photographs;
    final PhotographIntake intake;
    final FindingStore findings;
    final SittingStore sittings;
    final MeasureStore measures;
    final RoomAir roomAir;
    final ClimateStore climate;
    final Photographs loggerFiles;
    final GlueStore glue;
    final ConditionReports conditionReports;
    final SetupStore setups;
    final BridgeSheets bridgeSheets;
    final PaletteStore palette;
    final RetouchStore retouches;
    final CoatStore coats;
    final VarnishStore varnishes;
    final HandoverStore handovers;
    final FinalReports finalReports;
    final MarkStore marks;
    final CardPrintStore cardPrints;
    private final Ledger ledger;
    final Clock clock;

    private House(ShopFolder folder, Ledger ledger, Clock clock) {
        this.ledger = ledger;
        this.clock = clock;
        settings = new SettingsStore(ledger);
        owners = new OwnerStore(ledger);
        instruments = new InstrumentStore(ledger);
        visits = new VisitStore(ledger);
        originals = new Photographs(folder);
        smallPictures = new SmallPictures(folder, originals);
        photographs = new PhotographStore(ledger);
        intake = new PhotographIntake(photographs, originals, smallPictures, clock);
        findings = new FindingStore(ledger);
        sittings = new SittingStore(ledger);
        marks = new MarkStore(ledger);
        cardPrints = new CardPrintStore(ledger);
        measures = new MeasureStore(ledger);
        climate = new ClimateStore(ledger);
        loggerFiles = Photographs.ofLoggers(folder);
        glue = new GlueStore(ledger);
        roomAir = new RoomAir(
                ledger,
                moment ->
                        climate.findNear(moment).map(logged -> new Air(logged.temperature_C(), logged.humidity_pct())));
        conditionReports = new ConditionReports(
                owners, instruments, photographs, findings, sittings, measures, smallPictures, clock);
        findingLines = new FindingLines(findings);
        treatments = new TreatmentStore(ledger);
        plans = new BenchPlans(ledger, settings, clock);
        planAgreed = new PlanAgreed(ledger, plans);
        agreements = new AgreementStore(ledger, settings, clock, List.of(new AgreedSteps(), planAgreed));
        accessStudies = new AccessStore(ledger);
        clamps = new ClampStore(ledger);
        cleatSheets = new CleatSheets(settings, "Afterlength " + Version.get());
        proposals = new Proposals(
                settings,
                owners,
                instruments,
                visits,
                findingLines,
                treatments,
                agreements,
                new PlanReadyBy(plans, new PracticeStore(ledger)));
        steps = new StepStore(ledger);
        diary = new DiaryStore(ledger);
        materials = new MaterialStore(ledger);
        setups = new SetupStore(ledger);
        bridgeSheets = new BridgeSheets(instruments, setups, measures, settings, "Afterlength " + Version.get());
        palette = new PaletteStore(ledger);
        retouches = new RetouchStore(ledger);
        coats = new CoatStore(ledger);
        varnishes = new VarnishStore(ledger);
        handovers = new HandoverStore(ledger);
        finalReports = new FinalReports(
                settings,
                owners,
                instruments,
                photographs,
                smallPictures,
                findings,
                measures,
                agreements,
                diary,
                setups,
                handovers,
                clock);
    }

    static House of(ShopFolder folder, Clock clock) {
        return new House(folder, Ledger.open(folder), clock);
    }

    /** What the demonstration fills. */
    DemoStores demoStores(DemoClock demoClock) {
        return new DemoStores(
                demoClock,
                settings,
                visits,
                intake,
                findings,
                marks,
                measures,
                treatments,
                agreements,
                accessStudies,
                clamps,
                steps,
                diary,
                materials,
                plans,
                climate,
                loggerFiles,
                glue,
                setups,
                palette,
                retouches,
                varnishes,
                handovers);
    }

    Desk openDesk(int port) {
        Frames frames = new Frames(settings);
        VisitHome home = new VisitHome(frames, visits, instruments);
        MarkGrounds grounds = new MarkGrounds(home, photographs);
        CardSearches searches = new CardSearches(originals, cardPrints);
        List<Chapter> chapters = List.of(
                new ExaminationChapter(photographs, findings, measures),
                new AgreementChapter(proposals),
                new WorkChapter(steps, diary, clock),
                new SetupChapter(setups),
                new RetouchChapter(new CaseDesk(retouches, palette, coats)),
                new HandoverChapter(handovers));
        List<Room> rooms = List.of(
                new InstrumentPages(frames, owners, instruments, visits, chapters),
                new ReceivePages(frames, settings, owners, instruments, visits, clock),
                new PhotographPages(home, photographs, intake),
                new PictureRoom(photographs, originals, smallPictures),
                new CardPages(grounds, searches, "Afterlength " + Version.get()),
                new MarkPages(home, grounds, settings, findings, marks, searches, cardPrints, clock),
                new MarkActions(grounds, marks, findings, searches, clock),
                new MarkFiles(grounds, marks, findings, searches),
                new FindingPages(home, settings, findings, photographs, sittings, marks, clock),
                new SittingPages(home, settings, sittings, roomAir, clock),
                new MeasurePages(home, settings, measures, roomAir, clock),
                new ReportPages(home, settings, conditionReports),
                new TreatmentPages(frames, settings, visits, findingLines, treatments),
                new AgreementPages(frames, proposals, treatments, agreements, clock),
                new ClampPages(frames, clamps),
                new AccessPages(
                        frames,
                        settings,
                        visits,
                        instruments,
                        findingLines,
                        treatments,
                        accessStudies,
                        clamps,
                        cleatSheets,
                        clock),
                new WorkRoom(
                        frames,
                        ledger,
                        settings,
                        instruments,
                        visits,
                        List.of(new PotTimers(glue)),
                        new PlanAhead(plans),
                        clock),
                new PlanRoom(frames, ledger, settings, instruments, visits, plans, planAgreed),
                new ClimatePages(frames, settings, climate, loggerFiles, clock),
                new GluePages(frames, settings, visits, instruments, climate, glue, clock),
                new SourcesPages(frames),
                new SetupPages(
                        frames,
                        instruments,
                        visits,
                        setups,
                        new SetupStart(setups, measures, instruments, settings),
                        bridgeSheets,
                        clock),
                new BridgePapers(visits, bridgeSheets),
                new VarnishPages(frames, settings, varnishes, clock),
                new WornAreaPages(
                        frames, settings, instruments, visits, findings, varnishes, new WornAreaStore(ledger), clock),
                new PalettePages(frames, settings, palette, clock),
                new RetouchPages(frames, settings, instruments, visits, findings, palette, retouches, coats, clock),
                new HandoverPages(frames, settings, owners, instruments, visits, handovers, finalReports, clock));
        return Desk.open(port, rooms);
    }
}
