package padwright.language.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.AbstractElement;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;

/** Where a value that is not written yet belongs: the order of the grammar is fixed, so there is one such place. */
final class MissingField {

	private static final String BLOCK = "{";

	private MissingField() {
	}

	/**
	 * The place of a value in the text of an element; nothing where more than words had to be written with it.
	 *
	 * @param value the rule of the value
	 */
	static Optional<FieldPlace> place(ICompositeNode element, AbstractRule rule, FieldGrammar grammar,
			AbstractRule value) {
		List<INode> parts = parts(element);
		Optional<AbstractElement> missing = grammar.missingPart(parts.stream().map(MissingField::grammarOf).toList());
		Optional<String> words = missing.flatMap(grammar::wordsBefore);
		Optional<INode> behind = missing.flatMap(part -> lastBefore(parts, rule, part));
		if (words.isEmpty() || behind.isEmpty()) {
			return Optional.empty();
		}
		boolean isWhole = missing.get().eContainer().eContainer() == rule;
		return Optional.of(isWhole && isInBlock(parts, behind.get()) ? statement(element, behind.get(), words.get(), value)
				: new FieldPlace(behind.get().getEndOffset(), 0, " " + words.get(), "", value));
	}

	/** The nodes that an element consists of, without blanks and remarks. */
	static List<INode> parts(ICompositeNode element) {
		List<INode> parts = new ArrayList<>();
		for (INode child : element.getChildren()) {
			if (!(child instanceof ILeafNode leaf && leaf.isHidden())) {
				parts.add(child);
			}
		}
		return parts;
	}

	private static EObject grammarOf(INode node) {
		return node.getGrammarElement();
	}

	/** The last part in front of where a part of the rule belongs. */
	static Optional<INode> lastBefore(List<INode> parts, AbstractRule rule, AbstractElement missing) {
		List<EObject> order = FieldGrammar.order(rule);
		int at = position(order, missing, true);
		INode last = null;
		for (INode part : parts) {
			if (position(order, grammarOf(part), false) < at) {
				last = part;
			}
		}
		return Optional.ofNullable(last);
	}

	/** Where the first keyword or assignment within, or else around, an element of the grammar stands in its rule. */
	private static int position(List<EObject> order, EObject element, boolean within) {
		for (int index = 0; index < order.size(); index++) {
			EObject one = order.get(index);
			if (within ? EcoreUtil.isAncestor(element, one) : EcoreUtil.isAncestor(one, element)) {
				return index;
			}
		}
		return Integer.MAX_VALUE;
	}

	/** Whether a value behind {@code last} stands in a block of several lines. */
	private static boolean isInBlock(List<INode> parts, INode last) {
		for (INode part : parts) {
			if (part.getText().strip().equals(BLOCK)) {
				int next = parts.indexOf(part) + 1;
				return part.getOffset() <= last.getOffset() && next < parts.size()
						&& parts.get(next).getStartLine() > part.getStartLine();
			}
		}
		return false;
	}

	/** A line of its own behind the line of {@code last}, so that a remark stays with what it is said of. */
	private static FieldPlace statement(ICompositeNode element, INode last, String words, AbstractRule value) {
		String text = element.getRootNode().getText();
		int newLine = text.indexOf('\n', last.getEndOffset());
		boolean isWindows = newLine > 0 && text.charAt(newLine - 1) == '\r';
		int lineEnd = newLine < 0 ? last.getEndOffset() : isWindows ? newLine - 1 : newLine;
		String before = (isWindows ? "\r\n" : "\n") + indent(text, element.getOffset()) + "\t" + words;
		return new FieldPlace(lineEnd, 0, before, "", value);
	}

	private static String indent(String text, int offset) {
		int start = text.lastIndexOf('\n', offset - 1) + 1;
		int end = start;
		while (end < text.length() && (text.charAt(end) == '\t' || text.charAt(end) == ' ')) {
			end++;
		}
		return text.substring(start, end);
	}
}
