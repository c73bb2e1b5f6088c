package padwright.language.messages;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.StreamSupport;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.xtext.diagnostics.DiagnosticMessage;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.linking.impl.LinkingDiagnosticMessageProvider;
import org.eclipse.xtext.resource.IEObjectDescription;
import org.eclipse.xtext.scoping.IScopeProvider;

import com.google.inject.Inject;
import com.google.inject.Singleton;

import padwright.model.keysystem.KeySystemPackage;
import padwright.model.stock.StockPackage;
import padwright.workup.checks.IssueCodes;
import padwright.workup.words.FormerWords;
import padwright.workup.words.NearestName;

/** Tells of a name that refers to nothing, and which was probably meant. */
@Singleton
public class LinkMessages extends LinkingDiagnosticMessageProvider {

	private static final int MOST_NAMES_LISTED = 12;

	/** Kinds of things that are mostly named without having been declared. */
	private static final Set<EClass> UNDECLARED = Set.of(KeySystemPackage.Literals.TOUCH,
			KeySystemPackage.Literals.JOINT, StockPackage.Literals.PAD_KIND);

	@Inject
	private IScopeProvider scopes;

	@Override
	public DiagnosticMessage getUnresolvedProxyMessage(ILinkingDiagnosticContext context) {
		String written = context.getLinkText();
		List<String> names = StreamSupport.stream(
				scopes.getScope(context.getContext(), context.getReference()).getAllElements().spliterator(), false)
				.map(IEObjectDescription::getName).map(Object::toString).distinct().toList();
		String nearest = NearestName.among(names, written);
		EClass type = context.getReference().getEReferenceType();
		return new DiagnosticMessage(message(type, written, names, nearest), Severity.ERROR, IssueCodes.LINK, nearest,
				type.getName());
	}

	private static String message(EClass type, String written, List<String> names, String nearest) {
		String kind = Messages.of("kind." + type.getName());
		Optional<String> now = FormerWords.now(written).filter(word -> names.isEmpty() || word.equals(nearest));
		if (now.isPresent()) {
			return Messages.of("syntax.former", written, now.orElseThrow());
		}
		if (names.isEmpty() && UNDECLARED.contains(type)) {
			return Messages.of("link.undeclared." + type.getName(), written, written);
		}
		if (names.isEmpty()) {
			return type == KeySystemPackage.Literals.KEY ? Messages.of("link.noKeys", kind, written)
					: Messages.of("link.none", kind, written);
		}
		return names.size() > MOST_NAMES_LISTED ? Messages.of("link.many", kind, written, names.size(), nearest)
				: Messages.of("link.few", kind, written, String.join(", ", names), nearest);
	}
}
