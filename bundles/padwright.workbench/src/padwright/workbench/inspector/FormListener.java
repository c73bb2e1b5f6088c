package padwright.workbench.inspector;

import java.util.List;

import padwright.language.edit.ListRows;
import padwright.language.edit.TextEdit;

/** Told what is changed in a form. */
interface FormListener {

	/** A control has a new value, without fault. */
	void changed(FormCell cell, String value);

	/** Rows of a list were taken out, added or moved. */
	void edited(ListRows rows, List<TextEdit> edits);

	/** Whether a row of a list can be taken out. */
	boolean canRemove(ListRows rows);
}
