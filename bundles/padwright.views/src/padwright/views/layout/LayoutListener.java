package padwright.views.layout;

import java.util.List;

import padwright.language.edit.TextEdit;

/** Told what is done in a layout. */
public interface LayoutListener {

	/** Something is to be shown anew: a choice, a drag, a tool. */
	void changed();

	/** Changes of the text that the layout was read from, as one step. */
	void write(List<TextEdit> edits);

	/** Something was drawn from one thing to another that may mean several things. */
	void choose(String from, String to, List<LayoutLink.Kind> kinds);
}
