package org.garboard.drawing.dxf;

/** Handles of the records that every sheet has and others refer to. */
record Skeleton(int modelRecord, int paperRecord, int modelLayout, int paperLayout,
                int rootDictionary, int groupDictionary, int layoutDictionary, int lettering) {

    Skeleton(Handles handles) {
        this(handles.next(), handles.next(), handles.next(), handles.next(),
                handles.next(), handles.next(), handles.next(), handles.next());
    }
}
