package padwright.language.resource;

import java.util.Arrays;
import java.util.List;

import org.eclipse.xtext.linking.lazy.LazyLinkingResource;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.resource.XtextSyntaxDiagnostic;

import padwright.language.parser.SyntaxMessages;


/** A loaded document. A statement that is not finished is found wanting where it ends, not at the line behind it. */
public class DocumentResource extends LazyLinkingResource {

	@Override
	protected void addSyntaxDiagnostic(List<Diagnostic> diagnostics, INode error) {
		String[] data = error.getSyntaxErrorMessage().getIssueData();
		INode last = data != null && Arrays.asList(data).contains(SyntaxMessages.UNFINISHED) ? lastBefore(error) : null;
		if (last == null) {
			super.addSyntaxDiagnostic(diagnostics, error);
		} else {
			diagnostics.add(new At(last, error));
		}
	}

	/** The last word before; null where there is none. */
	private static INode lastBefore(INode error) {
		INode last = null;
		for (ILeafNode leaf : error.getRootNode().getLeafNodes()) {
			if (leaf.getOffset() >= error.getOffset()) {
				return last;
			}
			last = leaf.isHidden() ? last : leaf;
		}
		return last;
	}

	private static final class At extends XtextSyntaxDiagnostic {

		private final INode place;

		At(INode place, INode error) {
			super(error);
			this.place = place;
		}

		@Override
		protected INode getNode() {
			return place;
		}

		@Override
		public String getMessage() {
			return super.getNode().getSyntaxErrorMessage().getMessage();
		}

		@Override
		public String getCode() {
			return super.getNode().getSyntaxErrorMessage().getIssueCode();
		}

		@Override
		public String[] getData() {
			return super.getNode().getSyntaxErrorMessage().getIssueData();
		}
	}
}
