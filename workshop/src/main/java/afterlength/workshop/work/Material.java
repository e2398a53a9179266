package afterlength.workshop.work;

/**
 * A material on the shelf.
 *
 * @param kind in the shop's own words: glue, fill, varnish …
 * @param batch what tells one lot from the next: a number, a day of mixing
 * @param reversibleWith what takes it out again in twenty years
 */
public record Material(
        long id,
        String name,
        String kind,
        String batch,
        String reversibleWith,
        String remark,
        boolean putAway,
        int version) {
    public Material {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a material has a name");
        }
    }

    /** As it is written into the diary. */
    public String words() {
        return batch.isEmpty() ? name : name + ", batch " + batch;
    }
}
