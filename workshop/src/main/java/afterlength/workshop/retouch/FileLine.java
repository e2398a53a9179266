package afterlength.workshop.retouch;

import afterlength.workshop.desk.DecimalText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A line of an instrument's file with its cells, counted from 1 as an editor does. */
record FileLine(int number, String text, List<String> cells) {
    /** 400, 400.00, 400 nm, R400, SPEC_400. */
    private static final Pattern WAVELENGTH = Pattern.compile("[A-Za-z_ .-]*(\\d{3,4})(?:[.,]0+)?\\s*(?:nm)?");

    private static final double SHORTEST_NM = 300;
    private static final double LONGEST_NM = 1100;

    FileLine {
        cells = List.copyOf(cells);
    }

    /** All lines that hold anything, parted by tab, semicolon or comma, whichever of them comes first in this order. */
    static List<FileLine> list(String text) {
        String parting = text.contains("\t") ? "\t" : text.contains(";") ? ";" : ",";
        List<String> lines = text.replace("\uFEFF", "").lines().toList();
        List<FileLine> all = new ArrayList<>();
        for (int n = 0; n < lines.size(); n++) {
            String line = lines.get(n);
            if (!line.isBlank()) {
                all.add(new FileLine(n + 1, line.strip(), parted(line, parting)));
            }
        }
        return all;
    }

    /** Empty cells at the end are left over from a spreadsheet and count for nothing. */
    private static List<String> parted(String line, String parting) {
        return Pattern.compile(parting, Pattern.LITERAL)
                .splitAsStream(line)
                .map(cell -> cell.strip().replaceAll("^\"|\"$", "").strip())
                .toList();
    }

    String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }

    OptionalDouble number(int column) {
        return DecimalText.read(cell(column).replace("%", ""));
    }

    OptionalDouble wavelength_nm(int column) {
        Matcher matcher = WAVELENGTH.matcher(cell(column));
        if (!matcher.matches()) {
            return OptionalDouble.empty();
        }
        double value_nm = Double.parseDouble(matcher.group(1));
        return value_nm >= SHORTEST_NM && value_nm <= LONGEST_NM ? OptionalDouble.of(value_nm) : OptionalDouble.empty();
    }
}
