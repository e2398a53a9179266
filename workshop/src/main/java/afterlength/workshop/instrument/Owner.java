package afterlength.workshop.instrument;

/**
 * The person an instrument belongs to.
 *
 * @param version counts the changes, so that two people editing at once do not overwrite each other
 */
public record Owner(long id, String name, String email, String phone, String address, String remark, int version) {
    public Owner {
        if (name.isBlank()) {
            throw new IllegalArgumentException("an owner has a name");
        }
    }
}
