package padwright.workbench.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

import padwright.language.ide.facts.Plans;
import padwright.model.keysystem.Key;
import padwright.model.keysystem.KeyChange;
import padwright.model.keysystem.KeyFeatures;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;
import padwright.views.layout.Layout;
import padwright.views.map.KeyMapState;
import padwright.workbench.Messages;
import padwright.workup.checks.ModelChecks;

/**
 * The key system that is being drawn up.
 *
 * @param map of its keys, those that it inherits among them
 * @param layout of all its parts; with what is wrong while the text cannot be read as a whole
 */
public record SystemOnBench(String uri, String text, KeySystem system, KeyMapState map, Layout layout)
		implements Workpiece {

	static Optional<SystemOnBench> of(String uri, XtextResource document, int offset) {
		List<KeySystem> systems = Plans.systemsIn(document);
		return systems.stream().filter(system -> Workpiece.spans(system, offset)).findFirst()
				.or(() -> systems.stream().findFirst())
				.map(system -> new SystemOnBench(uri, document.getParseResult().getRootNode().getText(), system,
						KeyMapState.of(system, ModelChecks.check(system)), layout(system)));
	}

	static Layout layout(KeySystem system) {
		Layout layout = Layout.of(system);
		for (INode fault : ((XtextResource) system.eResource()).getParseResult().getSyntaxErrors()) {
			if (fault.getSyntaxErrorMessage() != null) {
				return layout.with(Messages.get("bench.faultInLine", fault.getStartLine(),
						fault.getSyntaxErrorMessage().getMessage()));
			}
		}
		return layout;
	}

	@Override
	public Optional<KeySystem> keySystem() {
		return Optional.of(system);
	}

	@Override
	public boolean isAt(int offset) {
		return ((Document) system.eContainer()).getSystems().stream()
				.noneMatch(other -> other != system && Workpiece.spans(other, offset));
	}

	@Override
	public Optional<String> keyAt(int offset) {
		return parts().filter(part -> Workpiece.spans(part, offset)).map(SystemOnBench::name)
				.flatMap(Optional::stream).findFirst();
	}

	@Override
	public Optional<Integer> offset(String key) {
		return parts().filter(part -> name(part).equals(Optional.of(key))).findFirst()
				.map(part -> NodeModelUtils.findActualNodeFor(part).getOffset());
	}

	private Stream<KeyFeatures> parts() {
		return Stream.concat(system.getKeys().stream(), system.getChanges().stream()
				.filter(KeyChange.class::isInstance).map(KeyChange.class::cast));
	}

	private static Optional<String> name(KeyFeatures part) {
		Key key = part instanceof KeyChange change ? change.getKey() : (Key) part;
		return Optional.ofNullable(key).map(Key::getName);
	}
}
