package afterlength.workshop.archive;

import org.jspecify.annotations.Nullable;

/** The part of the page that follows an archive being made. */
record ArchiveProgress(@Nullable ArchiveJob job) {
    String fileName() {
        return job == null || job.file() == null
                ? ""
                : String.valueOf(job.file().getFileName());
    }

    String size() {
        if (job == null || job.file() == null) {
            return "";
        }
        long kB = job.file().toFile().length() / 1000;
        return kB < 1000 ? kB + " kB" : kB / 1000 + " MB";
    }
}
