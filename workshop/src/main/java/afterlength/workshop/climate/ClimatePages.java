package afterlength.workshop.climate;

import afterlength.craft.air.AirRecord;
import afterlength.craft.air.ClimateStudy;
import afterlength.craft.units.Length;
import afterlength.craft.wood.Cut;
import afterlength.craft.wood.OpenFaces;
import afterlength.craft.wood.PlateResponse;
import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.paper.SvgPen;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The climate of the shop: its record drawn, its files, and the question of the crack. */
public final class ClimatePages implements Room {
    /** The belly of a violin, bare on its inside: what the record is told for. */
    private static final PlateResponse BELLY = PlateResponse.of(Length.ofMm(2.5), Cut.QUARTER, OpenFaces.ONE);

    private static final int USUAL_DAYS = 92;

    private final Frames frames;
    private final SettingsStore settings;
    private final ClimateStore climate;
    private final LoggerIntake intake;

    public ClimatePages(
            Frames frames, SettingsStore settings, ClimateStore climate, Photographs loggerFiles, Clock clock) {
        this.frames = frames;
        this.settings = settings;
        this.climate = climate;
        this.intake = new LoggerIntake(frames, settings, climate, loggerFiles, clock, this::show);
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/shelf/climate", context -> show(context, Typed.empty()));
        routes.get("/shelf/climate/wood", this::showWood);
        routes.get("/shelf/climate/files/{file}", context -> {
            AirFile file = climate.get(Addresses.id(context, "file"));
            Templates.show(context, new AirFilePage(inClimate(file.name()), file));
        });
        routes.post("/shelf/climate/files/{file}/put-away", context -> put(context, true));
        routes.post("/shelf/climate/files/{file}/take-back", context -> put(context, false));
        intake.open(routes);
    }

    private void put(Context context, boolean away) {
        climate.putAway(climate.get(Addresses.id(context, "file")).id(), away);
        context.redirect("/shelf/climate#files");
    }

    private void show(Context context, Typed typed) {
        Addresses.status(context, typed);
        List<String> places = climate.listPlaces();
        String asked = context.queryParam("place");
        String place = asked != null && places.contains(asked)
                ? asked
                : places.stream().findFirst().orElse("");
        int days = days(context);
        ClimateStudy study = study(place, days);
        Templates.show(
                context,
                new ClimatePage(
                        frames.at(Frame.Place.SHELF, "The air of the shop").back("/shelf", "Shelf"),
                        places,
                        place,
                        days,
                        study,
                        study == null ? "" : SvgPen.forScreen(ClimateChart.of(study, place)),
                        climate.list(),
                        climate.listPutAway(),
                        settings.get().demonstration(),
                        typed));
    }

    private static int days(Context context) {
        String asked = context.queryParam("days");
        return ClimatePage.SPANS.stream()
                .filter(span -> Integer.toString(span).equals(asked))
                .findFirst()
                .orElse(USUAL_DAYS);
    }

    /** The days before the newest reading, not before today: a logger is read out late. */
    private @Nullable ClimateStudy study(String place, int days) {
        return climate.list().stream()
                .filter(file -> file.place().equals(place))
                .map(AirFile::to)
                .max(Instant::compareTo)
                .map(last -> climate.record(place, last.minus(Duration.ofDays(days))))
                .filter(record -> record.size() > 0)
                .map((AirRecord record) -> ClimateStudy.of(record, BELLY))
                .orElse(null);
    }

    private void showWood(Context context) {
        Map<String, String> asked = new LinkedHashMap<>();
        context.queryParamMap().forEach((name, values) -> asked.put(name, values.isEmpty() ? "" : values.get(0)));
        Typed typed = asked.isEmpty() ? WoodForm.usual() : Typed.known(asked);
        WoodAnswer answer = WoodForm.read(typed).orElse(null);
        Addresses.status(context, typed);
        Templates.show(context, new WoodPage(inClimate("Will a crack close by itself?"), typed, answer));
    }

    private Frame inClimate(String title) {
        return frames.at(Frame.Place.SHELF, title).back("/shelf/climate", "The air of the shop");
    }
}
