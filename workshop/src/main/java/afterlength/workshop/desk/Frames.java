package afterlength.workshop.desk;

import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;

/** Makes the frame of every page, with the shop's name as it is now. */
public final class Frames {
    private final SettingsStore settings;

    public Frames(SettingsStore settings) {
        this.settings = settings;
    }

    public Frame at(Frame.Place place, String title) {
        Settings now = settings.get();
        return new Frame(new ShopSign(now.shopName(), now.demonstration()), place, title, null, "");
    }

    public Frame of(String title) {
        return at(Frame.Place.INSTRUMENT, title);
    }
}
