package padwright.language.formatting2;

import java.util.List;

import org.eclipse.xtext.formatting2.FormatterRequest;
import org.eclipse.xtext.formatting2.IFormatter2;
import org.eclipse.xtext.formatting2.regionaccess.ITextRegionAccess;
import org.eclipse.xtext.formatting2.regionaccess.ITextReplacement;
import org.eclipse.xtext.formatting2.regionaccess.TextRegionAccessBuilder;
import org.eclipse.xtext.resource.XtextResource;

import com.google.inject.Inject;
import com.google.inject.Provider;

/** Lays out the text of a document. */
public final class DocumentFormatter {

	@Inject
	private Provider<TextRegionAccessBuilder> regions;
	@Inject
	private Provider<FormatterRequest> requests;
	@Inject
	private Provider<IFormatter2> formatters;

	/**
	 * The text of a document in the common layout; nothing but blanks and line ends differ. A document with mistakes in
	 * its syntax is left as it is: what is not understood is better not moved.
	 */
	public String format(XtextResource document) {
		if (document.getParseResult().hasSyntaxErrors()) {
			return document.getParseResult().getRootNode().getText();
		}
		ITextRegionAccess access = regions.get().forNodeModel(document).create();
		FormatterRequest request = requests.get().setTextRegionAccess(access).setAllowIdentityEdits(false);
		List<ITextReplacement> replacements = formatters.get().format(request);
		return access.getRewriter().renderToString(replacements);
	}
}
