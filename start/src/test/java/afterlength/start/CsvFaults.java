package afterlength.start;

import java.util.ArrayList;
import java.util.List;

/** Cells of a CSV that a spreadsheet would carry out instead of showing. */
final class CsvFaults {
    private CsvFaults() {}

    static List<String> of(String path, String csv) {
        List<String> faults = new ArrayList<>();
        for (String line : csv.lines().toList()) {
            for (String cell : line.split("[,;\t]", -1)) {
                String bare = cell.replaceAll("^\"", "");
                if (bare.matches("[=+@\\t\\r-].*") && !bare.matches("[+-]?\\d+([.,]\\d+)?([eE][+-]?\\d+)?\"?")) {
                    faults.add(path + ": a spreadsheet would carry out " + cell);
                }
            }
        }
        return faults;
    }
}
