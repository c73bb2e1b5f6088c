package padwright.language.formatting2;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.AbstractRule;
import org.eclipse.xtext.ParserRule;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.formatting2.AbstractJavaFormatter;
import org.eclipse.xtext.formatting2.FormatterPreferenceKeys;
import org.eclipse.xtext.formatting2.FormatterRequest;
import org.eclipse.xtext.formatting2.IFormattableDocument;
import org.eclipse.xtext.formatting2.IHiddenRegionFormatter;
import org.eclipse.xtext.formatting2.IHiddenRegionFormatting;
import org.eclipse.xtext.formatting2.IMerger;
import org.eclipse.xtext.formatting2.ITextReplacer;
import org.eclipse.xtext.formatting2.regionaccess.IHiddenRegion;
import org.eclipse.xtext.formatting2.regionaccess.ISemanticRegion;
import org.eclipse.xtext.preferences.MapBasedPreferenceValues;

import com.google.inject.Inject;

import padwright.language.files.LineEnd;
import padwright.language.services.PadwrightGrammarAccess;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;
import padwright.model.plan.Estimate;
import padwright.model.plan.EstimateOption;
import padwright.model.plan.Invoice;
import padwright.model.plan.Job;
import padwright.model.plan.JobEntry;
import padwright.model.plan.KeyService;
import padwright.model.plan.Plan;
import padwright.model.plan.Round;
import padwright.model.stock.Letterhead;
import padwright.model.stock.Pad;
import padwright.model.stock.PaperWords;
import padwright.model.stock.Process;
import padwright.model.stock.Stock;

/**
 * The layout of a document: one line a key, one line a statement, single blanks between words, at most one empty line
 * in a row. The second and further rounds of a key have lines of their own, indented. Nothing is aligned in columns,
 * so that changing one row changes one line.
 */
public class PadwrightFormatter extends AbstractJavaFormatter {

	private static final List<String> TIGHT_BEFORE = List.of(",", ")", "*");
	private static final List<String> TIGHT_AFTER = List.of("(", "*");
	private static final String[] PLAN_STATEMENTS = { "date", "seat", "bed", "fit", "read" };
	private static final String[] JOB_STATEMENTS = { "process", "due" };
	private static final String[] PAD_STATEMENTS = { "kind", "thick", "sinks", "diameters", "stiffness", "needs",
			"price" };

	@Inject
	private PadwrightGrammarAccess grammar;

	/** Lines end as they do in the document, on whatever machine it is laid out. */
	@Override
	protected void initialize(FormatterRequest request) {
		super.initialize(request);
		String text = request.getTextRegionAccess().regionForDocument().getText();
		request.setPreferences(new MapBasedPreferenceValues(request.getPreferences(),
				Map.of(FormatterPreferenceKeys.lineSeparator.getId(), LineEnd.of(text).characters())));
	}

	@Override
	public ITextReplacer createHiddenRegionReplacer(IHiddenRegion region, IHiddenRegionFormatting formatting) {
		return new BlankLayout(region, formatting);
	}

	@Override
	public IMerger<ITextReplacer> createTextReplacerMerger() {
		return layouts -> BlankLayout.merged(layouts, createHiddenRegionFormattingMerger());
	}

	protected void format(Document document, IFormattableDocument text) {
		spaceWords(document, text);
		for (EObject element : document.eContents()) {
			text.prepend(element, this::startsBlock);
			text.format(element);
		}
		text.append(document, it -> it.newLine());
	}

	protected void format(KeySystem system, IFormattableDocument text) {
		block(system, text);
		statements(system, text, "pitch", "sounds");
		system.eContents().forEach(member -> text.prepend(member, this::startsLine));
	}

	protected void format(Stock stock, IFormattableDocument text) {
		block(stock, text);
		statements(stock, text, "bench");
		stock.eContents().stream().filter(item -> item != stock.getClimate())
				.forEach(item -> text.prepend(item, this::startsLine));
		stock.getPads().forEach(text::format);
		stock.getProcesses().forEach(text::format);
		if (stock.getLetterhead() != null) {
			text.format(stock.getLetterhead());
		}
	}

	protected void format(Process process, IFormattableDocument text) {
		block(process, text);
		process.getStages().forEach(stage -> text.prepend(stage, this::startsLine));
	}

	protected void format(Letterhead letterhead, IFormattableDocument text) {
		for (PaperWords words : letterhead.getWords()) {
			text.surround(words, it -> it.indent());
			text.prepend(words, it -> it.newLine());
		}
	}

	protected void format(Pad pad, IFormattableDocument text) {
		block(pad, text);
		statements(pad, text, PAD_STATEMENTS);
		pad.getLayers().forEach(layer -> text.prepend(layer, this::startsLine));
	}

	protected void format(Plan plan, IFormattableDocument text) {
		block(plan, text);
		statements(plan, text, PLAN_STATEMENTS);
		if (plan.getPlayer() != null) {
			text.prepend(plan.getPlayer(), this::startsLine);
		}
		if (plan.getInspection() != null) {
			text.prepend(plan.getInspection(), this::startsLine);
		}
		if (plan.getGauge() != null) {
			text.prepend(plan.getGauge(), this::startsLine);
		}
		plan.getRegulations().forEach(regulation -> text.prepend(regulation, this::startsLine));
		if (plan.getJob() != null) {
			text.prepend(plan.getJob(), this::startsLine);
			text.format(plan.getJob());
		}
		for (KeyService service : plan.getKeys()) {
			text.prepend(service, this::startsLine);
			service.getRounds().stream().skip(1).forEach(round -> laterRound(round, text));
		}
	}

	protected void format(Job job, IFormattableDocument text) {
		block(job, text);
		statements(job, text, JOB_STATEMENTS);
		for (JobEntry entry : job.getEntries()) {
			text.prepend(entry, this::startsLine);
			text.format(entry);
		}
	}

	protected void format(Estimate estimate, IFormattableDocument text) {
		block(estimate, text);
		for (EstimateOption option : estimate.getOptions()) {
			text.prepend(option, this::startsLine);
			block(option, text);
			option.getItems().forEach(item -> text.prepend(item, this::startsLine));
		}
	}

	protected void format(Invoice invoice, IFormattableDocument text) {
		block(invoice, text);
		invoice.getItems().forEach(item -> text.prepend(item, this::startsLine));
	}

	private void laterRound(Round round, IFormattableDocument text) {
		text.surround(round, it -> it.indent());
		text.prepend(round, it -> it.newLine());
	}

	private void block(EObject element, IFormattableDocument text) {
		ISemanticRegion open = regionFor(element).keyword("{");
		ISemanticRegion close = regionFor(element).keyword("}");
		if (open != null && close != null) {
			text.interior(open, close, it -> it.indent());
			text.prepend(close, this::startsLine);
		}
	}

	private void statements(EObject element, IFormattableDocument text, String... keywords) {
		for (String keyword : keywords) {
			text.prepend(regionFor(element).keyword(keyword), this::startsLine);
		}
	}

	private void spaceWords(Document document, IFormattableDocument text) {
		String before = "";
		for (ISemanticRegion region : regions(document)) {
			boolean tight = TIGHT_AFTER.contains(before) || TIGHT_BEFORE.contains(region.getText());
			text.prepend(region, it -> {
				it.setSpace(tight ? "" : " ");
				it.lowPriority();
			});
			spaceInside(region, text);
			before = region.getText();
		}
	}

	/** A number and its unit have a blank between them, other values of several words none. */
	private void spaceInside(ISemanticRegion region, IFormattableDocument text) {
		AbstractRule rule = region.getGrammarElement() instanceof RuleCall call ? call.getRule() : null;
		// By name, since the text may have been read by other services of the language than these.
		if (rule != null && (rule.getName().equals(grammar.getMeasureRule().getName())
				|| rule.getName().equals(grammar.getSignedMeasureRule().getName()))) {
			text.addReplacer(new WordLayout(region, " "));
		} else if (rule instanceof ParserRule && !region.getText().contains("\"")) {
			text.addReplacer(new WordLayout(region, ""));
		}
	}

	private List<ISemanticRegion> regions(Document document) {
		List<ISemanticRegion> regions = new ArrayList<>();
		textRegionExtensions.allSemanticRegions(document).forEach(regions::add);
		return regions;
	}

	private void startsBlock(IHiddenRegionFormatter it) {
		it.setNewLines(2);
	}

	private void startsLine(IHiddenRegionFormatter it) {
		it.setNewLines(1, 1, 2);
	}
}
