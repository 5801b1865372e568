package org.garboard.cli.start;

/**
 * A demo's job as the beginning of another boat's: it says whose it was, and is refused for as long as it does, so that
 * no figure of the demo boat passes for one that was measured.
 */
final class StartedJob {
    private static final String ROOT = "<job xmlns=\"urn:garboard:job\" version=\"1\">";

    private StartedJob() {
    }

    /** @param job the text of a demo's job; @param demo that demo's name; @param boat the new boat's, as it is to be printed */
    static String of(String job, String demo, String boat) {
        int root = job.indexOf(ROOT);
        int name = job.indexOf("<boat ", root);
        if (root < 0 || name < 0) {
            throw new IllegalStateException("the demo job of " + demo + " does not begin as demo jobs do");
        }
        int after = job.indexOf("/>", name) + 2;
        return """
            <?xml version="1.0" encoding="UTF-8"?>
            <!--
              Begun after the demo boat %1$s: every figure in here is that boat's, and that boat is invented. Go through it from
              top to bottom. Put your own figure in its place, or take the element away: what is not told is called NOT KNOWN and
              stands on the sheets as "look before cutting". What an element means, and what it may hold, stands in
              garboard-job.xsd. "garboard check job.xml" tells what is still the demo's. When nothing is, take like="%1$s" away:
              until then the job is refused.
            -->
            <job xmlns="urn:garboard:job" version="1" like="%1$s">""".formatted(demo)
            + job.substring(root + ROOT.length(), name)
            + "<boat name=\"" + attribute(boat) + "\"/>"
            + job.substring(after);
    }

    private static String attribute(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
