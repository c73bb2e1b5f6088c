package padwright.views;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

import com.google.inject.Injector;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.edit.TextEdit;
import padwright.language.files.UnreadableException;
import padwright.language.shop.Shop;
import padwright.language.shop.ShopFolder;
import padwright.model.keysystem.KeySystem;
import padwright.model.plan.Document;
import padwright.workup.checks.Finding;
import padwright.workup.checks.ModelChecks;
import padwright.workup.service.KeyJob;
import padwright.workup.service.ServicePlan;
import padwright.workup.solve.PlanSolution;
import padwright.workup.solve.PlanSolver;
import padwright.workup.solve.WrittenAnswers;

/** A plan on the bench: its text, and the model of it, that edits change. */
public final class Bench {

	private static final Injector LANGUAGE = PadwrightStandaloneSetup.doSetup();
	/** Seen from the folder of this bundle, which tests run in. */
	private static final Path EXAMPLES = Path.of("..", "..", "examples", "shop");
	private static final String SHOP = """
			system Flute {
				clock 12 at hinge
				joint body
				joint foot
				touch L2
				key A "A" open by L2 closes B through screw pitch 0.25 mm
					hole 13.2 mm cup 16.5 mm deep 2.95 mm hinge near at 100 mm
				key B "B♭" closed hole 13.2 mm cup 16.5 mm deep 2.95 mm hinge near at 130 mm
				key C "trill" closed hole 6 mm cup 8 mm hinge far on foot
			}
			stock Bench {
				levelling { enough 30 % }
				material acetal { }
				material polyester { }
				kind rigid { }
				pad Hard { kind rigid base acetal 32 thou thick 98 thou sinks 2 thou stiffness 0.1 }
				backing Disc acetal 20 thou
				film Clear polyester { 0.5 1 2 5 7.5 thou }
				feeler Tape 0.5 thou
				feeler Leaf 1 thou
				feeler Thick 2 thou
			}
			plan P for Flute with Bench {
				seat within 0.5 thou
				fit Hard on Disc with Clear
				read at\040""";
	private static final String FOUR = "12 3 6 9";
	private static final String EIGHT = "12 1.5 3 4.5 6 7.5 9 10.5";

	private final String head;
	private String text;
	private Document document;

	/** A plan for the keys A and B (which A closes) and C, with these rows. */
	public Bench(String rows) {
		this(FOUR, rows);
	}

	/** Likewise, with eight hours to be read. */
	public static Bench ofEightHours(String rows) {
		return new Bench(EIGHT, rows);
	}

	private Bench(String hours, String rows) {
		head = SHOP + hours + "\n";
		text = head + rows + "\n}\n";
		document = parse(text);
	}

	private static Document parse(String text) {
		try {
			XtextResource resource = (XtextResource) LANGUAGE.getInstance(XtextResourceSet.class)
					.createResource(URI.createURI("shop:/shop.plan"));
			resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
					Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
			return (Document) resource.getContents().get(0);
		} catch (IOException impossibleInMemory) {
			throw new UncheckedIOException(impossibleInMemory);
		}
	}

	/** The plans of the example shop. */
	public static List<ServicePlan> examples() {
		try {
			Shop shop = Shop.open(LANGUAGE, ShopFolder.documents(EXAMPLES));
			List<ServicePlan> plans = shop.files().stream().flatMap(file -> shop.document(file).stream())
					.flatMap(content -> content.getPlans().stream()).map(ServicePlan::new).toList();
			assertFalse(plans.isEmpty(), "the examples are found");
			return plans;
		} catch (UnreadableException missing) {
			throw new AssertionError(missing);
		}
	}

	public static List<Finding> findings(ServicePlan plan) {
		return ModelChecks.check(plan.plan().eContainer());
	}

	public static PlanSolution solve(ServicePlan plan) {
		return PlanSolver.solve(plan, WrittenAnswers.KEEP, job -> {
		});
	}

	/** Changes the text, and reads it again; it can always be written. */
	public boolean apply(List<TextEdit> edits) {
		text = TextEdit.apply(edits, text);
		document = parse(text);
		return true;
	}

	/** The rows as they are written now. */
	public String rows() {
		return text.substring(head.length(), text.length() - "\n}\n".length());
	}

	/** The system that the plan is for. */
	public KeySystem system() {
		return document.getSystems().get(0);
	}

	public ServicePlan plan() {
		return new ServicePlan(document.getPlans().get(0));
	}

	public List<Finding> findings() {
		return ModelChecks.check(document);
	}

	/** The row of a key. */
	public KeyJob row(String key) {
		return plan().jobs().stream().filter(job -> job.name().equals(key)).findFirst().orElseThrow();
	}
}
