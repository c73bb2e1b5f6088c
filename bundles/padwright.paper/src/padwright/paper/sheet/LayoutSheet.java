package padwright.paper.sheet;

import java.util.List;

import padwright.paper.page.HeadText;

/**
 * A key system as its maker documents it.
 *
 * @param head of the pages
 * @param title of the document
 * @param twelveLooksAt what 12 o'clock looks at
 * @param keys in the order of the system; their number on the sheet is their place in it, from 1
 * @param couplings by driver
 * @param notes in the order of the system
 */
public record LayoutSheet(HeadText head, String title, String twelveLooksAt, List<SheetKey> keys,
		List<SheetCoupling> couplings, List<SheetNote> notes) {

	/** @throws IllegalArgumentException if there is no key */
	public LayoutSheet {
		keys = List.copyOf(keys);
		couplings = List.copyOf(couplings);
		notes = List.copyOf(notes);
		if (keys.isEmpty()) {
			throw new IllegalArgumentException("a layout without keys says nothing");
		}
	}
}
