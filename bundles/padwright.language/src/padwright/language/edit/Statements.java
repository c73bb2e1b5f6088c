package padwright.language.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;

import padwright.model.keysystem.Change;
import padwright.model.keysystem.Fingering;
import padwright.model.keysystem.Hole;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Removal;
import padwright.model.keysystem.Rod;
import padwright.model.keysystem.Touch;

/** Where whole statements stand in the text of a key system: each on a line of its own, those of one kind together. */
final class Statements {

	/** What follows what, where a kind is not there yet. */
	private static final List<Class<?>> ORDER = List.of(Removal.class, Joint.class, Touch.class, Hole.class, Key.class,
			Rod.class, Change.class, Fingering.class);
	private static final String END = "}";

	private final KeySystem system;
	private final INode whole;
	private final String text;
	private final String newLine;

	Statements(KeySystem system) {
		this.system = system;
		whole = ClauseEdits.node(system);
		text = whole.getRootNode().getText();
		newLine = text.contains("\r\n") ? "\r\n" : "\n";
	}

	/** Adds statements behind the last of their kind, or behind the last of the kinds that come before it. */
	TextEdit add(Class<?> kind, List<String> statements) {
		Optional<INode> last = last(kind);
		int offset = last.map(this::lineEnd).orElseGet(this::behindHead);
		String start = newLine + indent(last);
		String apart = isNewGroup(kind, last) ? newLine : "";
		String end = isBeforeEnd(offset) ? newLine + indentOf(whole.getOffset()) : "";
		return new TextEdit(offset, 0, apart + start + String.join(start, statements) + end);
	}

	private boolean isNewGroup(Class<?> kind, Optional<INode> last) {
		return statements().stream().noneMatch(kind::isInstance) && last.isPresent() && isSpaced();
	}

	/** Whether groups of statements have blank lines between them. */
	private boolean isSpaced() {
		return text.substring(whole.getOffset(), whole.getEndOffset()).lines().anyMatch(String::isBlank);
	}

	private List<EObject> statements() {
		List<EObject> all = new ArrayList<>(system.eContents());
		all.removeIf(each -> ORDER.stream().noneMatch(kind -> kind.isInstance(each)) || ClauseEdits.node(each) == null);
		return all;
	}

	private Optional<INode> last(Class<?> kind) {
		for (int index = ORDER.indexOf(kind); index >= 0; index--) {
			Optional<INode> last = statements().stream().filter(ORDER.get(index)::isInstance).<INode>map(ClauseEdits::node)
					.max(Comparator.comparingInt(INode::getOffset));
			if (last.isPresent()) {
				return last;
			}
		}
		return Optional.empty();
	}

	/** The end of its line with its remark; its own end where something else follows on the line. */
	private int lineEnd(INode statement) {
		int end = ClauseEdits.end(statement);
		int lineEnd = endOfLine(end);
		String rest = text.substring(end, lineEnd).strip();
		return rest.isEmpty() || rest.startsWith("//") ? lineEnd : end;
	}

	private int endOfLine(int from) {
		int end = text.indexOf('\n', from);
		return end < 0 ? text.length() : end > from && text.charAt(end - 1) == '\r' ? end - 1 : end;
	}

	/** Behind the head of the system: what stands before its first statement. */
	private int behindHead() {
		INode head = system.getClock() == null ? null : ClauseEdits.node(system.getClock());
		for (INode part : MissingField.parts((ICompositeNode) whole)) {
			boolean isStatement = statements().stream().anyMatch(each -> ClauseEdits.node(each) == part);
			if (isStatement || part.getText().strip().equals(END)) {
				break;
			}
			head = part;
		}
		return lineEnd(head);
	}

	private boolean isBeforeEnd(int offset) {
		return text.substring(offset, endOfLine(offset)).strip().startsWith(END);
	}

	private String indent(Optional<INode> like) {
		return like.map(node -> indentOf(node.getOffset())).filter(indent -> !indent.isEmpty())
				.orElseGet(() -> indentOf(whole.getOffset()) + "\t");
	}

	/** The blanks that the line of a place begins with. */
	private String indentOf(int offset) {
		int start = text.lastIndexOf('\n', offset - 1) + 1;
		int end = start;
		while (end < text.length() && (text.charAt(end) == '\t' || text.charAt(end) == ' ')) {
			end++;
		}
		return text.substring(start, end);
	}

	/** Takes a statement out, its line too if nothing else stands on it; a remark behind it stays. */
	TextEdit remove(EObject statement) {
		INode node = ClauseEdits.node(statement);
		int start = node.getOffset();
		int end = ClauseEdits.end(node);
		int lineStart = text.lastIndexOf('\n', start - 1) + 1;
		int lineEnd = endOfLine(end);
		String kept = ClauseEdits.removal(node, start, end).text().strip();
		if (!text.substring(lineStart, start).isBlank()) {
			return new TextEdit(start, end - start, kept);
		}
		if (text.substring(end, lineEnd).isBlank() && kept.isEmpty()) {
			int next = text.startsWith("\r\n", lineEnd) ? lineEnd + 2 : Math.min(text.length(), lineEnd + 1);
			return new TextEdit(lineStart, next - lineStart, "");
		}
		int blank = end;
		while (kept.isEmpty() && blank < lineEnd && Character.isWhitespace(text.charAt(blank))) {
			blank++;
		}
		return new TextEdit(start, blank - start, kept.isEmpty() ? "" : kept + newLine + indentOf(start));
	}
}
