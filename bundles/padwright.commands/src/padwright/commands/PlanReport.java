package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

import padwright.language.shop.ShopFinding;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A command that tells something about one plan, in spite of errors in it, which it lists before. */
abstract class PlanReport implements Callable<Integer> {

	@Parameters(paramLabel = "PLAN", description = "A .plan file; FILE#NAME for one of several plans in it.")
	private Path file;

	@Option(names = "--json", description = "Print the answer for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public final Integer call() {
		LoadedShop shop = LoadedShop.around(file);
		ServicePlan plan = shop.plan();
		List<ShopFinding> errors = shop.errors(plan);
		FindingLines.print(err(), errors);
		int status = report(plan);
		return errors.isEmpty() ? status : Math.max(status, ExitStatus.FINDINGS);
	}

	/** @return the exit status if the plan has no errors */
	abstract int report(ServicePlan plan);

	/** Prints one of two forms of the answer. */
	final void print(Map<String, Object> forPrograms, Consumer<PrintWriter> forPeople) {
		PrintWriter out = spec.commandLine().getOut();
		if (json) {
			Json.print(out, forPrograms);
		} else {
			forPeople.accept(out);
			out.flush();
		}
	}

	final Path file() {
		return file;
	}

	final PrintWriter err() {
		return spec.commandLine().getErr();
	}
}
