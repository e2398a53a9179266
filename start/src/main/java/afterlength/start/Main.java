package afterlength.start;

import afterlength.workshop.ledger.ShopFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;

/** Starts the program. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        House house = House.of(ShopFolder.open(Path.of(arguments[0])), Clock.system(ZoneId.systemDefault()));
        System.out.println("The shop is open at " + house.openDesk(4711).address());
    }
}
