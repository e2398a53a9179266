package afterlength.workshop.tablet;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.desk.Room;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The door for tablets: shut until somebody at the shop's machine opens it, and shut again with the program. While it is shut,
 * nothing listens to the network.
 */
public final class TabletDoor implements AutoCloseable {
    private final TabletStore tablets;
    private final Clock clock;
    private final PairingCode code = new PairingCode();
    private final TabletKey key;
    private List<Room> rooms = List.of();
    private @Nullable Desk desk;

    public TabletDoor(ShopFolder shop, TabletStore tablets, Clock clock) {
        this.tablets = tablets;
        this.clock = clock;
        key = new TabletKey(shop);
    }

    /** The rooms behind the door; told once, when they are all there. */
    public void leadTo(List<Room> behind) {
        rooms = List.copyOf(behind);
    }

    synchronized void open(int port) throws IOException {
        if (desk == null) {
            List<String> names = OwnAddresses.list();
            List<Room> all = new ArrayList<>(rooms);
            all.add(new PairPages(tablets, code, clock));
            desk = Desk.openToNetwork(port, key.open(names), new TabletEntrance(tablets, names, clock), all);
        }
        code.issue(clock.instant());
    }

    synchronized boolean isOpen() {
        return desk != null;
    }

    synchronized int port() {
        return desk == null ? 0 : desk.port();
    }

    PairingCode code() {
        return code;
    }

    String fingerprint() throws IOException {
        return key.fingerprint();
    }

    @Override
    public synchronized void close() {
        if (desk != null) {
            desk.close();
            desk = null;
        }
    }
}
