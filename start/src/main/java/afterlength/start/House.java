package afterlength.start;

import afterlength.start.demo.DemoClock;
import afterlength.start.demo.DemoStores;
import afterlength.workshop.advice.AdvicePages;
import afterlength.workshop.advice.DecisionStore;
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
import afterlength.workshop.agreement.WayRoom;
import afterlength.workshop.agreement.WaySearches;
import afterlength.workshop.archive.ArchiveMaker;
import afterlength.workshop.archive.ArchivePages;
import afterlength.workshop.archive.ShopAtHand;
import afterlength.workshop.backup.BackupPages;
import afterlength.workshop.climate.ClimatePages;
import afterlength.workshop.climate.ClimateStore;
import afterlength.workshop.closing.LastChanceChapter;
import afterlength.workshop.closing.LastChancePages;
import afterlength.workshop.closing.TickStore;
import afterlength.workshop.desk.Desk;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.InstalledPages;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.SourcesPages;
import afterlength.workshop.examination.Air;
import afterlength.workshop.examination.CalibratedCameraStore;
import afterlength.workshop.examination.CameraPages;
import afterlength.workshop.examination.CardPages;
import afterlength.workshop.examination.CardPrintStore;
import afterlength.workshop.examination.CardSearches;
import afterlength.workshop.examination.ConditionReports;
import afterlength.workshop.examination.CustodyReceipts;
import afterlength.workshop.examination.ExaminationChapter;
import afterlength.workshop.examination.FindingPages;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.FlatPictures;
import afterlength.workshop.examination.FlatRoom;
import afterlength.workshop.examination.LensGathering;
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
import afterlength.workshop.examination.TracedMarks;
import afterlength.workshop.examination.VisitHome;
import afterlength.workshop.glue.GluePages;
import afterlength.workshop.glue.GlueStore;
import afterlength.workshop.glue.PotTimers;
import afterlength.workshop.handover.CalendarPages;
import afterlength.workshop.handover.CarePages;
import afterlength.workshop.handover.CareSheets;
import afterlength.workshop.handover.CheckPages;
import afterlength.workshop.handover.FinalReports;
import afterlength.workshop.handover.HandoverChapter;
import afterlength.workshop.handover.HandoverPages;
import afterlength.workshop.handover.HandoverStore;
import afterlength.workshop.handover.OwnerStories;
import afterlength.workshop.handover.PromisedChecks;
import afterlength.workshop.handover.StoryPages;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.InstrumentPages;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.ReceivePages;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.invoice.BillingCases;
import afterlength.workshop.invoice.InvoiceChapter;
import afterlength.workshop.invoice.InvoicePages;
import afterlength.workshop.invoice.InvoicePapers;
import afterlength.workshop.invoice.InvoiceRulesStore;
import afterlength.workshop.invoice.InvoiceStore;
import afterlength.workshop.invoice.OfferedLines;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.plan.BenchPlans;
import afterlength.workshop.plan.PlanAgreed;
import afterlength.workshop.plan.PlanAhead;
import afterlength.workshop.plan.PlanReadyBy;
import afterlength.workshop.plan.PlanRoom;
import afterlength.workshop.privacy.Eraser;
import afterlength.workshop.privacy.PersonPages;
import afterlength.workshop.retouch.CaseDesk;
import afterlength.workshop.retouch.CoatStore;
import afterlength.workshop.retouch.DryingAir;
import afterlength.workshop.retouch.LineDesk;
import afterlength.workshop.retouch.MendedLinePages;
import afterlength.workshop.retouch.MendedLineStore;
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
import afterlength.workshop.tablet.TabletDoor;
import afterlength.workshop.tablet.TabletPages;
import afterlength.workshop.tablet.TabletStore;
import afterlength.workshop.work.AgreedSteps;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.MaterialStore;
import afterlength.workshop.work.StepStore;
import afterlength.workshop.work.WorkChapter;
import afterlength.workshop.work.WorkRoom;
import java.time.Clock;
import java.util.ArrayList;
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
    final DecisionStore decisions;
    final TickStore ticks;
    final CleatSheets cleatSheets;
    final Proposals proposals;
    final StepStore steps;
    final DiaryStore diary;
    final MaterialStore materials;
    final BenchPlans plans;
    private final PlanAgreed planAgreed;
    final Photographs originals;
    final SmallPictures smallPictures;
    final FlatPictures flatPictures;
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
    final CustodyReceipts custodyReceipts;
    final SetupStore setups;
    final BridgeSheets bridgeSheets;
    final PaletteStore palette;
    final RetouchStore retouches;
    final CoatStore coats;
    final MendedLineStore mendedLines;
    final VarnishStore varnishes;
    final HandoverStore handovers;
    final FinalReports finalReports;
    final CareSheets careSheets;
    final InvoiceStore invoices;
    final InvoiceRulesStore invoiceRules;
    final BillingCases billingCases;
    final InvoicePapers invoicePapers;
    final MarkStore marks;
    final CardPrintStore cardPrints;
    final CalibratedCameraStore calibratedCameras;
    final TabletStore tablets;
    final TabletDoor tabletDoor;
    private final ShopFolder folder;
    private final Ledger ledger;
    final Clock clock;

    private House(ShopFolder folder, Ledger ledger, Clock clock, BenchPlans plans) {
        this.folder = folder;
        this.ledger = ledger;
        this.clock = clock;
        settings = new SettingsStore(ledger);
        owners = new OwnerStore(ledger);
        instruments = new InstrumentStore(ledger);
        visits = new VisitStore(ledger);
        originals = new Photographs(folder);
        smallPictures = new SmallPictures(folder, originals);
        flatPictures = new FlatPictures(folder, originals);
        photographs = new PhotographStore(ledger);
        intake = new PhotographIntake(photographs, originals, smallPictures, clock);
        findings = new FindingStore(ledger);
        sittings = new SittingStore(ledger);
        marks = new MarkStore(ledger);
        cardPrints = new CardPrintStore(ledger);
        calibratedCameras = new CalibratedCameraStore(ledger);
        tablets = new TabletStore(ledger);
        tabletDoor = new TabletDoor(folder, tablets, clock);
        measures = new MeasureStore(ledger);
        climate = new ClimateStore(ledger);
        loggerFiles = Photographs.ofLoggers(folder);
        glue = new GlueStore(ledger);
        roomAir = new RoomAir(
                ledger,
                moment ->
                        climate.findNear(moment).map(logged -> new Air(logged.temperature_C(), logged.humidity_pct())));
        conditionReports = new ConditionReports(
                owners, instruments, photographs, findings, sittings, measures, marks, smallPictures, clock);
        custodyReceipts = new CustodyReceipts(owners, instruments, photographs, smallPictures);
        findingLines = new FindingLines(findings);
        treatments = new TreatmentStore(ledger);
        this.plans = plans;
        planAgreed = new PlanAgreed(ledger, plans);
        agreements = new AgreementStore(ledger, settings, clock, List.of(new AgreedSteps(), planAgreed));
        accessStudies = new AccessStore(ledger);
        clamps = new ClampStore(ledger);
        decisions = new DecisionStore(ledger);
        ticks = new TickStore(ledger);
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
        mendedLines = new MendedLineStore(ledger);
        varnishes = new VarnishStore(ledger);
        handovers = new HandoverStore(ledger);
        invoices = new InvoiceStore(ledger, clock);
        invoiceRules = new InvoiceRulesStore(ledger);
        billingCases = new BillingCases(
                settings,
                owners,
                instruments,
                visits,
                agreements,
                new OfferedLines(agreements, treatments, steps, diary),
                invoices,
                invoiceRules);
        invoicePapers = new InvoicePapers(invoices, settings);
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
                mendedLines,
                handovers,
                new HouseGluings(glue),
                clock);
        careSheets = new CareSheets(settings, owners, instruments, measures, handovers, clock);
    }

    /** The shop as an archive sees it. */
    ShopAtHand atHand() {
        return new ShopAtHand(folder, ledger, visit -> Papers.possible(this, visit));
    }

    /** Makes archives of this shop. */
    ArchiveMaker archiveMaker() {
        return new ArchiveMaker(
                atHand(), copy -> House.of(copy, clock).atHand(), clock, "Afterlength " + Version.get());
    }

    static House of(ShopFolder folder, Clock clock) {
        Ledger ledger = Ledger.open(folder);
        return new House(folder, ledger, clock, new BenchPlans(ledger, new SettingsStore(ledger), clock));
    }

    /** The same where nobody waits for a better plan, for tests that send thousands of forms. */
    static House searchingFor(double search_s, ShopFolder folder, Clock clock) {
        Ledger ledger = Ledger.open(folder);
        return new House(folder, ledger, clock, new BenchPlans(ledger, new SettingsStore(ledger), clock, search_s));
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
                new LineDesk(photographs, originals, new CardSearches(originals, cardPrints, calibratedCameras)),
                mendedLines,
                handovers,
                invoices,
                invoiceRules,
                billingCases,
                decisions,
                ticks);
    }

    Desk openDesk(int port) {
        Frames frames = new Frames(settings);
        VisitHome home = new VisitHome(frames, visits, instruments);
        MarkGrounds grounds = new MarkGrounds(home, photographs);
        CardSearches searches = new CardSearches(originals, cardPrints, calibratedCameras);
        WaySearches ways = new WaySearches();
        TracedMarks traced = new TracedMarks(photographs, marks, searches);
        List<Chapter> chapters = List.of(
                new ExaminationChapter(photographs, findings, measures),
                new AgreementChapter(proposals),
                new LastChanceChapter(agreements, treatments, ticks),
                new WorkChapter(steps, diary, clock),
                new SetupChapter(setups),
                new RetouchChapter(new CaseDesk(retouches, palette, coats), mendedLines),
                new HandoverChapter(handovers),
                new InvoiceChapter(invoices));
        ArchivePages archivePages = new ArchivePages(frames, folder, instruments, owners, archiveMaker());
        List<Room> rooms = List.of(
                new InstalledPages(frames),
                new InstrumentPages(frames, owners, instruments, visits, chapters),
                new ReceivePages(frames, settings, owners, instruments, visits, clock),
                new PhotographPages(home, photographs, intake),
                new PictureRoom(photographs, originals, smallPictures),
                new CardPages(grounds, searches, "Afterlength " + Version.get()),
                new MarkPages(home, grounds, settings, findings, marks, searches, cardPrints, clock),
                new CameraPages(frames, settings, calibratedCameras, new LensGathering(), cardPrints, searches, clock),
                new MarkActions(grounds, marks, findings, searches, clock),
                new MarkFiles(grounds, marks, findings, searches),
                new FlatRoom(home, grounds, searches, flatPictures),
                new FindingPages(home, settings, findings, photographs, sittings, marks, clock),
                new SittingPages(home, settings, sittings, roomAir, clock),
                new MeasurePages(home, settings, measures, roomAir, clock),
                new ReportPages(home, settings, conditionReports, custodyReceipts),
                new TreatmentPages(frames, settings, visits, findingLines, treatments),
                new AgreementPages(frames, proposals, treatments, agreements, clock),
                new LastChancePages(frames, settings, visits, agreements, treatments, ticks, clock),
                new AdvicePages(frames, settings, findings, findingLines, accessStudies, decisions, clock),
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
                        traced,
                        ways,
                        clock),
                new WayRoom(ways),
                new WorkRoom(
                        frames,
                        ledger,
                        settings,
                        instruments,
                        visits,
                        List.of(new PotTimers(glue)),
                        new PlanAhead(plans),
                        new PromisedChecks(ledger),
                        clock),
                new PlanRoom(frames, ledger, settings, instruments, visits, plans, planAgreed),
                new ClimatePages(frames, settings, climate, loggerFiles, clock),
                new GluePages(frames, settings, visits, instruments, climate, glue, clock),
                new BackupPages(frames, folder, clock),
                new SourcesPages(frames),
                new PersonPages(
                        frames, settings, owners, ledger, new Eraser(folder, ledger), archivePages::forget, clock),
                archivePages,
                new SetupPages(
                        frames,
                        instruments,
                        visits,
                        setups,
                        new SetupStart(setups, measures, instruments, settings),
                        bridgeSheets,
                        traced,
                        clock),
                new BridgePapers(visits, bridgeSheets),
                new VarnishPages(frames, settings, varnishes, dryingAir(), clock),
                new WornAreaPages(
                        frames,
                        settings,
                        instruments,
                        visits,
                        findings,
                        varnishes,
                        new WornAreaStore(ledger),
                        dryingAir(),
                        clock),
                new PalettePages(frames, settings, palette, clock),
                new RetouchPages(frames, settings, instruments, visits, findings, palette, retouches, coats, clock),
                new MendedLinePages(
                        frames,
                        settings,
                        instruments,
                        visits,
                        marks,
                        new LineDesk(photographs, originals, searches),
                        mendedLines,
                        clock),
                new HandoverPages(frames, settings, owners, instruments, visits, handovers, finalReports, clock),
                new CarePages(visits, careSheets),
                new InvoicePages(frames, billingCases, invoices, invoiceRules, invoicePapers, clock),
                new CalendarPages(instruments, visits, handovers, clock),
                new CheckPages(frames, settings, instruments, visits, handovers, measures, clock),
                new StoryPages(
                        frames,
                        owners,
                        instruments,
                        visits,
                        new OwnerStories(
                                settings,
                                instruments,
                                photographs,
                                smallPictures,
                                findings,
                                measures,
                                diary,
                                handovers)));
        tabletDoor.leadTo(rooms);
        List<Room> all = new ArrayList<>(rooms);
        all.add(new TabletPages(frames, tabletDoor, tablets, clock, port == 0 ? 0 : TabletPages.USUAL_PORT));
        return Desk.open(port, all, tabletDoor::close);
    }

    private DryingAir dryingAir() {
        return (from, to) ->
                climate.findMean(from, to).map(air -> new DryingAir.Mean(air.temperature_C(), air.humidity_pct()));
    }
}
