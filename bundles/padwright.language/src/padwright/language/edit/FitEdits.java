package padwright.language.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

import padwright.engine.length.Length;
import padwright.engine.length.LengthUnit;
import padwright.language.files.LineEnd;
import padwright.model.LengthText;
import padwright.model.Lengths;
import padwright.model.Measure;
import padwright.model.keysystem.HoleFeatures;
import padwright.model.keysystem.JointFeatures;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.KeySystem;
import padwright.model.keysystem.KeySystemPackage.Literals;
import padwright.model.systems.EffectiveHole;
import padwright.model.systems.EffectiveJoint;
import padwright.model.systems.Merged;
import padwright.workup.sound.SizeChange;

/**
 * Puts changed sizes into the text of a key system. A size that the system says itself is replaced where it stands, in its
 * unit; for inherited ones changes are written as the last lines of the system, ended as most of its text is. The rest stays as it is.
 */
public final class FitEdits {

	/** As the grammar has it. */
	private static final List<SizeChange.Size> IN_ORDER = List.of(SizeChange.Size.DIAMETER, SizeChange.Size.PLACE,
			SizeChange.Size.LENGTH, SizeChange.Size.BORE_END);

	private final KeySystem system;
	private final List<TextEdit> edits = new ArrayList<>();
	private final Map<Merged<?, ?>, StringBuilder> inherited = new LinkedHashMap<>();

	/**
	 * Where a size is written.
	 *
	 * @param element that says it
	 */
	private record Said(EObject element, EAttribute attribute) {

		Length length() {
			return Lengths.of((Measure) element.eGet(attribute), element).orElseThrow();
		}
	}

	private FitEdits(KeySystem system) {
		this.system = system;
	}

	public static List<TextEdit> of(KeySystem system, List<SizeChange> changes) {
		FitEdits fit = new FitEdits(system);
		for (SizeChange.Size size : IN_ORDER) {
			changes.stream().filter(change -> change.size() == size).forEach(fit::add);
		}
		fit.addInherited();
		return fit.edits;
	}

	private void add(SizeChange change) {
		Said said = change.part().features().stream().flatMap(features -> said(features, change.size()).stream())
				.findFirst().orElseThrow();
		Length length = said.length().plus(change.by());
		if (EcoreUtil.isAncestor(system, said.element())) {
			INode node = NodeModelUtils.findNodesForFeature(said.element(), said.attribute()).get(0);
			LengthUnit unit = ((Measure) said.element().eGet(said.attribute())).unit();
			edits.add(ClauseEdits.replaced(node, written(length, unit, said.element())));
		} else {
			inherited.computeIfAbsent(change.part(), this::beginning).append(before(change))
					.append(written(length, null, system));
		}
	}

	private static Optional<Said> said(EObject features, SizeChange.Size size) {
		return switch (size) {
		case PLACE -> said(features, Literals.PLACED__POSITION);
		case LENGTH -> said(features, Literals.JOINT_FEATURES__LENGTH);
		case BORE_END -> ((JointFeatures) features).getBore().stream().reduce((upper, lower) -> lower)
				.flatMap(point -> said(point, Literals.BORE_POINT__POSITION));
		case DIAMETER -> Optional.<EObject>ofNullable(features instanceof KeyFeatures key ? key.getHole()
				: ((HoleFeatures) features).getSize()).flatMap(hole -> said(hole, Literals.TONE_HOLE__DIAMETER));
		};
	}

	private static Optional<Said> said(EObject element, EAttribute attribute) {
		return Optional.ofNullable(element.eGet(attribute)).map(measure -> new Said(element, attribute));
	}

	/** In the unit that stood there; in millimetres where that would not be exact. */
	private static String written(Length length, LengthUnit before, EObject context) {
		LengthUnit unit = Lengths.unit(before, context);
		Optional<String> number = LengthText.number(length, unit);
		return number.isEmpty() ? length.in(LengthUnit.MILLIMETRE, 6).toPlainString() + " mm"
				: number.get() + (before == null ? "" : " " + unit.symbol());
	}

	private StringBuilder beginning(Merged<?, ?> part) {
		IValueConverterService names = ((XtextResource) system.eResource()).getResourceServiceProvider()
				.get(IValueConverterService.class);
		boolean isJoint = part instanceof EffectiveJoint;
		String kind = isJoint ? "joint " : part instanceof EffectiveHole ? "hole " : "";
		return new StringBuilder("change ").append(kind)
				.append(names.toString(part.name(), isJoint ? "JointName" : "Name"));
	}

	/** What stands before the size in a change of something inherited. */
	private String before(SizeChange change) {
		return switch (change.size()) {
		case PLACE -> " at ";
		case LENGTH -> " long ";
		case BORE_END -> " bore " + upToItsEnd(((EffectiveJoint) change.part()).bore());
		case DIAMETER -> change.part() instanceof EffectiveHole ? " " : " hole ";
		};
	}

	/** A bore can only be said whole. */
	private String upToItsEnd(List<EffectiveJoint.Width> bore) {
		int last = bore.size() - 1;
		return bore.subList(0, last).stream().map(width -> written(width.diameter(), null, system)
				+ width.position().map(place -> " at " + written(place, null, system)).orElse("") + ", ")
				.collect(Collectors.joining()) + written(bore.get(last).diameter(), null, system) + " at ";
	}

	/** Before the brace that closes the system. */
	private void addInherited() {
		if (inherited.isEmpty()) {
			return;
		}
		ICompositeNode node = NodeModelUtils.findActualNodeFor(system);
		String text = node.getRootNode().getText();
		int brace = node.getEndOffset() - 1;
		int lineStart = text.lastIndexOf('\n', brace) + 1;
		boolean isAlone = text.substring(lineStart, brace).isBlank();
		String end = LineEnd.of(text).characters();
		String lines = inherited.values().stream().map(line -> "\t" + line + end).collect(Collectors.joining());
		edits.add(new TextEdit(isAlone ? lineStart : brace, 0, isAlone ? lines : end + lines));
	}
}
