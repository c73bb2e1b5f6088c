package padwright.language.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.Titled;

/**
 * What of a system's text goes with things that are deleted: their statements, and wherever the system names them. A
 * part that cannot do without what is deleted goes as a whole, as a coupling does with the key that it drives.
 */
final class Deletion {

	private record Member(EObject element, EStructuralFeature list) {
	}

	private final KeySystem system;
	private final Set<EObject> statements = new LinkedHashSet<>();
	private final Map<Member, Set<Integer>> members = new LinkedHashMap<>();
	private final List<TextEdit> clauses = new ArrayList<>();

	private Deletion(KeySystem system) {
		this.system = system;
	}

	/** The edits that delete what is the system's own, and all that it says of {@code things}. */
	static List<TextEdit> of(KeySystem system, Collection<? extends Titled> things) {
		Deletion deletion = new Deletion(system);
		things.stream().filter(thing -> thing.eContainer() == system).forEach(deletion.statements::add);
		Set<Titled> gone = new HashSet<>(things);
		system.eAllContents().forEachRemaining(element -> deletion.mentions(element, gone));
		return deletion.edits();
	}

	private void mentions(EObject element, Set<Titled> things) {
		for (EReference reference : element.eClass().getEAllReferences()) {
			if (reference.isContainment() || reference.isContainer()) {
				continue;
			}
			if (reference.isMany()) {
				List<?> values = (List<?>) element.eGet(reference);
				for (int place = 0; place < values.size(); place++) {
					if (things.contains(values.get(place))) {
						member(element, reference, place);
					}
				}
			} else if (things.contains(element.eGet(reference))) {
				leaveOut(element, reference);
			}
		}
	}

	private void member(EObject element, EStructuralFeature list, int place) {
		members.computeIfAbsent(new Member(element, list), none -> new TreeSet<>()).add(place);
	}

	private void leaveOut(EObject element, EReference reference) {
		Optional<WrittenClause> clause = WrittenClause.of(element, reference.getName());
		if (clause.isPresent()) {
			clauses.addAll(clause.get().takeOut());
		} else if (element.eContainer() == system) {
			statements.add(element);
		} else {
			List<?> list = (List<?>) element.eContainer().eGet(element.eContainingFeature());
			member(element.eContainer(), element.eContainingFeature(), list.indexOf(element));
		}
	}

	private List<TextEdit> edits() {
		Statements lines = new Statements(system);
		List<TextEdit> edits = new ArrayList<>(statements.stream().map(lines::remove).toList());
		members.forEach((member, places) -> {
			if (!isGone(member.element())) {
				edits.addAll(new ListClause(member.element(), member.list()).remove(places));
			}
		});
		clauses.stream().filter(edit -> edits.stream().noneMatch(whole -> holds(whole, edit))).toList()
				.forEach(edits::add);
		return edits;
	}

	private boolean isGone(EObject element) {
		return statements.stream().anyMatch(statement -> EcoreUtil.isAncestor(statement, element));
	}

	private static boolean holds(TextEdit whole, TextEdit part) {
		return whole.offset() <= part.offset()
				&& part.offset() + part.length() <= whole.offset() + whole.length();
	}
}
