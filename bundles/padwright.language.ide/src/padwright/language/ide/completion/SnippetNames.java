package padwright.language.ide.completion;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.IGrammarAccess;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;
import org.eclipse.xtext.scoping.IScopeProvider;

import com.google.inject.Inject;

import padwright.model.keysystem.KeySystemPackage;

/**
 * Puts what the shop knows into the stops of a snippet: <code>${1@Rule.feature:name}</code> becomes a choice of the
 * names that the grammar links there, or just {@code name} where there is none; <code>${1@today:2026-01-31}</code>
 * becomes the day.
 */
final class SnippetNames {

	private static final Pattern NAMED = Pattern.compile("\\$\\{(\\d+)@([\\w.]+):([^}]*)}");
	private static final String TODAY = "today";
	/** More than that are no help to choose from. */
	private static final int MOST = 40;

	@Inject
	private IGrammarAccess grammar;
	@Inject
	private IScopeProvider scopes;
	@Inject
	private WrittenNames written;
	@Inject
	private FittingReferences references;

	/** The template of a snippet in the protocol's own form. */
	String filled(Snippet snippet, ContentAssistContext context) {
		return NAMED.matcher(snippet.template()).replaceAll(stop -> Matcher.quoteReplacement(
				stop(stop.group(1), known(stop.group(2), context), stop.group(3))));
	}

	private static String stop(String number, List<String> known, String otherwise) {
		return known.size() < 2 ? "${" + number + ":" + (known.isEmpty() ? otherwise : known.get(0)) + "}"
				: "${" + number + "|" + String.join(",", known) + "|}";
	}

	private List<String> known(String what, ContentAssistContext context) {
		if (what.equals(TODAY)) {
			return List.of(LocalDate.now().toString());
		}
		CrossReference reference = reference(what);
		EReference feature = GrammarUtil.getReference(reference);
		EObject place = context.getCurrentModel();
		List<String> names = StreamSupport.stream(scopes.getScope(place, feature).getAllElements().spliterator(), false)
				.filter(candidate -> references.fits(candidate, reference, context))
				.map(candidate -> written.of(candidate, reference)).distinct()
				.collect(Collectors.toCollection(ArrayList::new));
		if (feature.getEReferenceType() == KeySystemPackage.Literals.KEY) {
			// A scope has the last key first.
			Collections.reverse(names);
		}
		return names.subList(0, Math.min(MOST, names.size()));
	}

	private CrossReference reference(String place) {
		String[] parts = place.split("\\.");
		AbstractRule rule = GrammarUtil.findRuleForName(grammar.getGrammar(), parts[0]);
		return GrammarUtil.containedAssignments(rule).stream().filter(found -> found.getFeature().equals(parts[1]))
				.map(Assignment::getTerminal).map(CrossReference.class::cast).findFirst().orElseThrow();
	}
}
