package padwright.language.merge;

import java.io.StringReader;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.parser.IParseResult;
import org.eclipse.xtext.parser.IParser;

import com.google.inject.Inject;

import padwright.language.files.LineEnd;

/**
 * Merges two edited copies of a document. What stands in the same row and clause is merged, wherever its lines went;
 * only what both copies changed differently is a conflict. Text that neither copy touched stays as it is.
 */
public final class DocumentMerge {

	@Inject
	private IParser parser;

	/** @param base what both copies were made from */
	public MergeResult merge(String base, String ours, String theirs) {
		LineEnd lineEnd = lineEnd(LineEnd.of(base), LineEnd.of(ours), LineEnd.of(theirs));
		boolean alike = LineEnd.of(base) == LineEnd.of(ours) && LineEnd.of(base) == LineEnd.of(theirs);
		return alike ? merge(base, ours, theirs, lineEnd.characters())
				: merge(lineEnd.in(base), lineEnd.in(ours), lineEnd.in(theirs), lineEnd.characters());
	}

	private static LineEnd lineEnd(LineEnd base, LineEnd ours, LineEnd theirs) {
		return base == ours ? theirs : ours;
	}

	private MergeResult merge(String base, String ours, String theirs, String lineEnd) {
		Sides whole = Sides.of(base, ours, theirs);
		if (whole.agree()) {
			return new MergeResult(whole.ours(), 0, false);
		}
		List<IParseResult> copies = List.of(parse(base), parse(ours), parse(theirs));
		if (copies.stream().anyMatch(DocumentMerge::isUnclear)) {
			return LineMerge.merge(base, ours, theirs, lineEnd);
		}
		Set<String> single = single(copies);
		PartMerge merge = new PartMerge(lineEnd);
		String text = merge.document(Parts.of(copies.get(0).getRootNode(), base, single),
				Parts.of(copies.get(1).getRootNode(), ours, single),
				Parts.of(copies.get(2).getRootNode(), theirs, single));
		return merge.conflicts() == 0 && isUnclear(parse(text)) ? LineMerge.merge(base, ours, theirs, lineEnd)
				: new MergeResult(text, merge.conflicts(), false);
	}

	private IParseResult parse(String text) {
		return parser.parse(new StringReader(text));
	}

	private static boolean isUnclear(IParseResult copy) {
		return copy.hasSyntaxErrors() || copy.getRootASTElement() == null;
	}

	private static Set<String> single(List<IParseResult> copies) {
		Set<String> single = new HashSet<>();
		Set<String> several = new HashSet<>();
		for (IParseResult copy : copies) {
			Map<String, Integer> counts = new HashMap<>();
			for (EObject element : copy.getRootASTElement().eContents()) {
				(counts.merge(Identity.kind(element), 1, Integer::sum) > 1 ? several : single)
						.add(Identity.kind(element));
			}
		}
		single.removeAll(several);
		return single;
	}
}
