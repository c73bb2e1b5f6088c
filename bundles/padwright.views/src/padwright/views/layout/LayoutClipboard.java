package padwright.views.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

import padwright.language.edit.TextEdit;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.Rod;
import padwright.model.keysystem.Touch;

/** Copies things of a system as the text that they are written in, and adds such text again. */
record LayoutClipboard(LayoutTexts texts) {

	private static final Map<String, Class<? extends EObject>> KINDS = Map.of("key", Key.class, "hole", Hole.class,
			"touch", Touch.class, "rod", Rod.class);
	private static final Pattern STATEMENT = Pattern.compile("(key|hole|touch|rod)\\s+(\"[^\"]*\"|\\S+)(.*)");

	/** One line for each. */
	static String text(List<LayoutItem> items) {
		return items.stream().map(item -> NodeModelUtils.findActualNodeFor(item.thing()))
				.map(LayoutClipboard::inOneLine).collect(Collectors.joining("\n"));
	}

	private static String inOneLine(INode node) {
		return NodeModelUtils.getTokenText(node).strip().replaceAll("\\s*\\R\\s*", " ");
	}

	/** What in a text is no statement of a layout is left out. */
	List<TextEdit> paste(String text) {
		List<TextEdit> edits = new ArrayList<>();
		for (String line : text.lines().toList()) {
			Matcher statement = STATEMENT.matcher(line.strip());
			if (statement.matches()) {
				String kind = statement.group(1);
				String name = texts.unlike(statement.group(2).replace("\"", ""));
				edits.addAll(texts.added(KINDS.get(kind), kind + " " + texts.quoted(name) + statement.group(3)));
			}
		}
		return texts.together(edits);
	}
}
