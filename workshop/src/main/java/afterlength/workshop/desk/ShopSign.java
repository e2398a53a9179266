package afterlength.workshop.desk;

/** The shop's name, and whether everything in it is invented for the demonstration. */
public record ShopSign(String shopName, boolean demonstration) {}
