package afterlength.workshop.archive;

import java.time.LocalDate;
import java.util.List;

/** What a person without any program needs to know of an archive. */
final class ReadMeFirst {
    private ReadMeFirst() {}

    static String text(String program, ArchiveWish wish, LocalDate today, List<String> leftOut) {
        return """
                What this is
                ------------
                Records of the restoration of bowed string instruments (%s), written on %s by %s.
                No program is needed to read it: texts and tables open in any editor or spreadsheet, papers are PDF, pictures are JPEG or PNG.

                instruments/N/            an instrument: instrument.jsonld (what it is, measures, findings, work; Linked Art), measures.csv
                instruments/N/visit-…/    a stay in the workshop: its papers, how it changed hands, marks on pictures (Web Annotations)
                people/                   owners as vCard and Linked Art
                photographs/, loggers/    files under the SHA-256 of their bytes
                tables/                   every row of the record as CSV; \\N is nothing, a text that begins with a backslash has one more
                contexts/                 what the words of the JSON-LD files mean, as far as they are used here
                ro-crate-metadata.json    an index of all files (RO-Crate 1.2)
                ../manifest-sha256.txt    check sums of all files (BagIt, RFC 8493): sha256sum -c manifest-sha256.txt

                Who may have it
                ---------------
                %s

                The way back
                ------------
                ./afterlength read-archive THIS.zip --shop AN-EMPTY-FOLDER
                makes a shop of it again. Corrected and withdrawn entries are in the tables, nothing is smoothed.
                Not in here: small copies of pictures (they are made again) and backups of the database.
                %s""".formatted(
                        wish.words(),
                        today,
                        program,
                        wish.goesOut()
                                ? "Photographs carry neither place nor names from the camera: only how it was held, when, and with which lens."
                                        + (wish.withoutPeople()
                                                ? "\nWhat told of owners was erased from this copy; texts and pictures were not read by a person."
                                                : "\nIt holds data of the owner; give it to nobody else without asking.")
                                : "The workshop only. It holds data of all owners, and photographs as the camera wrote them, places included.",
                        leftOut.isEmpty()
                                ? ""
                                : "\nPictures named in the record whose file was missing or unreadable:\n"
                                        + String.join("\n", leftOut) + "\n");
    }
}
