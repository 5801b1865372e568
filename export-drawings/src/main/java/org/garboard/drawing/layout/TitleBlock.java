package org.garboard.drawing.layout;

import java.util.List;

/**
 * What a title block says. Fields after ISO 7200, and those a yard needs besides.
 *
 * @param owner legal owner
 * @param number identification number
 * @param date of issue
 * @param title of the sheet
 * @param boat supplementary title: name and hull number
 * @param documentType "Siting drawing"
 * @param creator who made it
 * @param approver who approves; empty leaves the field to be filled in by hand
 * @param revision letter or number
 * @param sheet number of this sheet and which sheets the set holds
 * @param scale "1:20"
 * @param units of the figures
 * @param paper sheet size
 * @param projection which symbol is drawn
 * @param sourceName what the sheet is drawn from and that a hash follows, "Table of offsets, SHA-256"
 * @param source its file and hash
 * @param version of the software
 * @param status in capitals, above all the rest
 * @param revisions that stand over the block, the first issue first; none where none are told
 */
public record TitleBlock(String owner, String number, String date, String title, String boat, String documentType,
                         String creator, String approver, String revision, String sheet, String scale, String units,
                         String paper, Projection projection, String sourceName, String source, String version, String status,
                         List<Revision> revisions) {
    public TitleBlock {
        revisions = List.copyOf(revisions);
    }

    /** One row of the table of revisions. */
    public record Revision(String mark, String date, String by, String changed) {
    }

    /** Method of projection (ISO 5456-2). */
    public enum Projection { FIRST_ANGLE, THIRD_ANGLE }
}
