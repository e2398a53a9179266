package afterlength.workshop.tablet;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The addresses under which this machine is reached in the shop's own network, never the wide one. */
final class OwnAddresses {
    private OwnAddresses() {}

    static List<String> list() {
        List<String> addresses = new ArrayList<>();
        try {
            for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                if (card.isUp() && !card.isLoopback()) {
                    Collections.list(card.getInetAddresses()).stream()
                            .filter(OwnAddresses::isOfTheShop)
                            .forEach(address -> addresses.add(address.getHostAddress()));
                }
            }
        } catch (SocketException noNetwork) {
            return List.of();
        }
        return addresses;
    }

    private static boolean isOfTheShop(InetAddress address) {
        return address instanceof Inet4Address && address.isSiteLocalAddress();
    }
}
