package padwright.language.edit;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;

import padwright.model.stock.StockPackage;

/**
 * The parts of an element that stand in a list, as rows of a form: layers of a pad, partial shims, points of a bore. Every
 * row has few enough fields to stand in one line. The sizes of an assortment are read as one line.
 *
 * @param element that has the list
 */
public record ListRows(EObject element, EReference list) {

	/** More would not fit beside each other. */
	private static final int MOST_FIELDS = 4;

	/** The list that a field says; nothing where it is none, is empty, or its parts have too many fields. */
	public static Optional<ListRows> of(ElementField field) {
		if (!(field.feature() instanceof EReference list) || !list.isContainment() || !list.isMany()
				|| list == StockPackage.Literals.ASSORTMENT__SIZES) {
			return Optional.empty();
		}
		return Optional.of(new ListRows(field.element(), list)).filter(rows -> rows.size() > 0
				&& rows.nodes().size() == rows.size() && rows.fields(0).size() <= MOST_FIELDS);
	}

	private List<INode> nodes() {
		return Clauses.nodes(element, list);
	}

	private EObject part(int row) {
		return (EObject) ((List<?>) element.eGet(list)).get(row);
	}

	public int size() {
		return ((List<?>) element.eGet(list)).size();
	}

	/** What can be said of a part, in the order of the grammar. */
	public List<ElementField> fields(int row) {
		return ElementFields.ofPart(part(row));
	}

	/** Whether a part can be taken out: where the list is inherited, not the last one. */
	public boolean canRemove(boolean isInherited) {
		return size() > 1 || !isInherited;
	}

	/** Takes a part out; with the last one the clause goes. */
	public List<TextEdit> remove(int row) {
		if (isByComma()) {
			return new ListClause(element, list).remove(Set.of(row));
		}
		INode node = nodes().get(row);
		String text = node.getRootNode().getText();
		int lineStart = text.lastIndexOf('\n', node.getOffset()) + 1;
		int lineEnd = text.indexOf('\n', Clauses.end(node)) + 1;
		boolean isALine = lineEnd > 0 && text.substring(lineStart, node.getOffset()).isBlank()
				&& text.substring(Clauses.end(node), lineEnd).isBlank();
		int start = isALine ? lineStart : node.getOffset() - blanks(node).length();
		return List.of(Clauses.removal(node, start, isALine ? lineEnd : Clauses.end(node)));
	}

	/** Says a part once more behind itself, to be changed then. */
	public List<TextEdit> again(int row) {
		INode node = nodes().get(row);
		return List.of(Clauses.insertion(node, (isByComma() ? ", " : blanks(node)) + text(node)));
	}

	/** Has a part and the next one change places. */
	public List<TextEdit> swap(int row) {
		INode one = nodes().get(row);
		INode other = nodes().get(row + 1);
		return List.of(Clauses.replaced(one, text(other)), Clauses.replaced(other, text(one)));
	}

	/** The whole list as it would be after edits of it, for a change of what is inherited. */
	public String after(List<TextEdit> edits) {
		List<INode> nodes = nodes();
		int start = nodes.get(0).getOffset();
		String text = nodes.get(0).getRootNode().getText().substring(start, Clauses.end(nodes.get(nodes.size() - 1)));
		List<TextEdit> here = edits.stream()
				.map(edit -> new TextEdit(edit.offset() - start, edit.length(), edit.text())).toList();
		return TextEdit.apply(here, text).strip().replaceAll("\\s*\\R\\s*", " ");
	}

	private static String text(INode node) {
		return node.getRootNode().getText().substring(node.getOffset(), Clauses.end(node));
	}

	private boolean isByComma() {
		Optional<AbstractRule> rule = ElementFields.rule((ICompositeNode) Clauses.node(element));
		return rule.filter(of -> GrammarUtil.containedAssignments(of).stream()
				.filter(each -> each.getFeature().equals(list.getName())).count() > 1).isPresent();
	}

	/** What stands before a part: a blank, or the beginning of its line. */
	private static String blanks(INode node) {
		String text = node.getRootNode().getText();
		int start = node.getOffset();
		while (start > 0 && Character.isWhitespace(text.charAt(start - 1))) {
			start--;
		}
		return text.substring(start, node.getOffset());
	}
}
