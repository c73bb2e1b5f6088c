package padwright.language.ide;

import org.eclipse.xtext.ide.editor.contentassist.IProposalConflictHelper;
import org.eclipse.xtext.ide.editor.contentassist.IdeContentProposalProvider;
import org.eclipse.xtext.ide.editor.contentassist.IdeCrossrefProposalProvider;
import org.eclipse.xtext.ide.editor.folding.IFoldingRangeProvider;
import org.eclipse.xtext.ide.editor.syntaxcoloring.ISemanticHighlightingCalculator;
import org.eclipse.xtext.ide.refactoring.IRenameStrategy2;
import org.eclipse.xtext.ide.server.codeActions.ICodeActionService2;
import org.eclipse.xtext.ide.server.codelens.ICodeLensService;
import org.eclipse.xtext.ide.server.commands.IExecutableCommandService;
import org.eclipse.xtext.ide.server.formatting.FormattingService;
import org.eclipse.xtext.ide.server.hover.IHoverService;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolDetailsProvider;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolKindProvider;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolNameProvider;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolRangeProvider;
import org.eclipse.xtext.parser.IEncodingProvider;
import org.eclipse.xtext.resource.IDefaultResourceDescriptionStrategy;
import org.eclipse.xtext.resource.IResourceDescription;

import com.google.inject.Binder;

import padwright.language.ide.actions.PlanActions;
import padwright.language.ide.actions.SolveCommandService;
import padwright.language.ide.actions.SolveLens;
import padwright.language.ide.coloring.TokenColours;
import padwright.language.ide.completion.OneConflictAtATime;
import padwright.language.ide.completion.Proposals;
import padwright.language.ide.completion.ReferenceProposals;
import padwright.language.ide.folding.FoldedBlocks;
import padwright.language.ide.hover.FactsHover;
import padwright.language.ide.index.AffectedDocuments;
import padwright.language.ide.index.FingerprintedNames;
import padwright.language.ide.index.Utf8;
import padwright.language.ide.layout.LayoutService;
import padwright.language.ide.rename.RenameStrategy;
import padwright.language.ide.symbols.SymbolDetails;
import padwright.language.ide.symbols.SymbolKinds;
import padwright.language.ide.symbols.SymbolNames;
import padwright.language.ide.symbols.SymbolRanges;

/** The services that editors of every kind share. */
public class PadwrightIdeModule extends AbstractPadwrightIdeModule {

	public void configureEncoding(Binder binder) {
		binder.bind(IEncodingProvider.class).to(Utf8.class);
	}

	public Class<? extends ICodeActionService2> bindICodeActionService2() {
		return PlanActions.class;
	}

	public Class<? extends ICodeLensService> bindICodeLensService() {
		return SolveLens.class;
	}

	public Class<? extends IExecutableCommandService> bindIExecutableCommandService() {
		return SolveCommandService.class;
	}

	public Class<? extends IdeContentProposalProvider> bindIdeContentProposalProvider() {
		return Proposals.class;
	}

	@Override
	public Class<? extends IProposalConflictHelper> bindIProposalConflictHelper() {
		return OneConflictAtATime.class;
	}

	public Class<? extends IdeCrossrefProposalProvider> bindIdeCrossrefProposalProvider() {
		return ReferenceProposals.class;
	}

	public Class<? extends IHoverService> bindIHoverService() {
		return FactsHover.class;
	}

	public Class<? extends FormattingService> bindFormattingService() {
		return LayoutService.class;
	}

	public Class<? extends ISemanticHighlightingCalculator> bindISemanticHighlightingCalculator() {
		return TokenColours.class;
	}

	public Class<? extends IFoldingRangeProvider> bindIFoldingRangeProvider() {
		return FoldedBlocks.class;
	}

	public Class<? extends DocumentSymbolNameProvider> bindDocumentSymbolNameProvider() {
		return SymbolNames.class;
	}

	public Class<? extends DocumentSymbolKindProvider> bindDocumentSymbolKindProvider() {
		return SymbolKinds.class;
	}

	public Class<? extends DocumentSymbolRangeProvider> bindDocumentSymbolRangeProvider() {
		return SymbolRanges.class;
	}

	public Class<? extends DocumentSymbolDetailsProvider> bindDocumentSymbolDetailsProvider() {
		return SymbolDetails.class;
	}

	@Override
	public Class<? extends IRenameStrategy2> bindIRenameStrategy2() {
		return RenameStrategy.class;
	}

	public Class<? extends IDefaultResourceDescriptionStrategy> bindIDefaultResourceDescriptionStrategy() {
		return FingerprintedNames.class;
	}

	public Class<? extends IResourceDescription.Manager> bindIResourceDescription$Manager() {
		return AffectedDocuments.class;
	}
}
