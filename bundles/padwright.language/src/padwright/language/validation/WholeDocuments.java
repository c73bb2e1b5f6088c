package padwright.language.validation;

import java.util.Map;

import org.eclipse.emf.common.util.BasicDiagnostic;
import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EValidator;
import org.eclipse.xtext.validation.CancelableDiagnostician;

import com.google.inject.Inject;

/**
 * Asks the validator about documents only. Every check of {@link PadwrightValidator} begins at a document, so that the
 * hundreds of elements in it need not be offered to it one by one.
 */
public class WholeDocuments extends CancelableDiagnostician {

	@Inject
	public WholeDocuments(EValidator.Registry validators) {
		super(validators);
	}

	@Override
	protected boolean doValidateContents(EObject document, DiagnosticChain findings, Map<Object, Object> context) {
		return true;
	}

	/** Only what it gathers is told, so that it needs no words of its own. */
	@Override
	public BasicDiagnostic createDefaultDiagnostic(EObject document) {
		return new BasicDiagnostic(null, 0, null, new Object[] { document });
	}
}
