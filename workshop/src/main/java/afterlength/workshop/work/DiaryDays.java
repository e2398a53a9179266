package afterlength.workshop.work;

import afterlength.workshop.desk.Days;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The entries of one day, in order. */
record DiaryDays(LocalDate day, List<DiaryEntry> entries) {

    /** Splits a diary, which is in the order of time, at midnight. */
    static List<DiaryDays> of(List<DiaryEntry> diary) {
        List<DiaryDays> days = new ArrayList<>();
        for (DiaryEntry entry : diary) {
            LocalDate day = Days.day(entry.writing().at());
            if (days.isEmpty() || !days.get(days.size() - 1).day().equals(day)) {
                days.add(new DiaryDays(day, new ArrayList<>()));
            }
            days.get(days.size() - 1).entries().add(entry);
        }
        return days;
    }
}
