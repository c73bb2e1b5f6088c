package padwright.workbench.editor;

import java.util.Map;
import java.util.Set;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.lsp4j.SemanticTokenTypes;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;

/** How each kind of word looks; the colours are those of the theme. */
final class TextStyles {

	static final String PREFIX = "padwright.workbench.text.";

	private static final Map<String, String> COLOURS = Map.ofEntries(
			Map.entry(SemanticTokenTypes.Keyword, "keyword"), Map.entry(SemanticTokenTypes.Comment, "comment"),
			Map.entry(SemanticTokenTypes.String, "string"), Map.entry(SemanticTokenTypes.Number, "number"),
			Map.entry(SemanticTokenTypes.Modifier, "number"), Map.entry(SemanticTokenTypes.Variable, "key"),
			Map.entry(SemanticTokenTypes.EnumMember, "keyword"), Map.entry(SemanticTokenTypes.Type, "article"),
			Map.entry(SemanticTokenTypes.Parameter, "article"), Map.entry(SemanticTokenTypes.Class, "document"),
			Map.entry(SemanticTokenTypes.Namespace, "document"), Map.entry(SemanticTokenTypes.Property, "key"));
	private static final Set<String> BOLD = Set.of(SemanticTokenTypes.Variable, SemanticTokenTypes.Class,
			SemanticTokenTypes.Namespace);

	private TextStyles() {
	}

	static StyleRange range(ColouredWord word) {
		String colour = COLOURS.get(word.kind());
		return new StyleRange(word.offset(), word.length(),
				colour == null ? null : JFaceResources.getColorRegistry().get(PREFIX + colour), null,
				BOLD.contains(word.kind()) ? SWT.BOLD : SWT.NORMAL);
	}
}
