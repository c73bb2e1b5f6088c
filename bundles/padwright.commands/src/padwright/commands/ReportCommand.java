package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import padwright.language.shop.ShopFinding;
import padwright.workup.extensions.Added;
import padwright.workup.extensions.Extensions;
import padwright.workup.report.Report;
import padwright.workup.report.ReportExtension;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Prints a report that an extension adds. */
@Command(name = "report", mixinStandardHelpOptions = true, exitCodeListHeading = "%nExit status:%n",
		exitCodeList = { "0:told", "1:the plan has errors", "2:there is no such report, or it cannot be made of this plan" },
		description = "Prints a report that an extension adds; without a name, what reports there are.")
final class ReportCommand implements Callable<Integer> {

	@Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "The report.")
	private String name;

	@Parameters(index = "1", arity = "0..1", paramLabel = "PLAN",
			description = "A .plan file; FILE#NAME for one of several plans in it.")
	private Path file;

	@Option(names = "--json", description = "Print the answer for programs.")
	private boolean json;

	@Spec
	private CommandSpec spec;

	@Override
	public Integer call() {
		AddedByName<ReportExtension> reports = AddedByName.of("report", ReportExtension.class);
		PrintWriter out = spec.commandLine().getOut();
		if (name == null) {
			reports.list(out);
			return ExitStatus.CLEAN;
		}
		Added<ReportExtension> report = reports.get(name);
		if (file == null) {
			throw new ParameterException(spec.commandLine(), "name the plan that it is to tell of");
		}
		LoadedShop shop = LoadedShop.around(file);
		ServicePlan plan = shop.plan();
		List<ShopFinding> errors = shop.errors(plan);
		FindingLines.print(spec.commandLine().getErr(), errors);
		print(told(report, plan), out);
		return errors.isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
	}

	private Report told(Added<ReportExtension> report, ServicePlan plan) {
		try {
			return Extensions.installed().answer(report, IllegalArgumentException.class, () -> report.thing().report(plan))
					.orElseThrow(() -> new InputException("the report " + name + " was not made"));
		} catch (IllegalArgumentException refused) {
			throw new InputException(file, refused.getMessage());
		}
	}

	private void print(Report report, PrintWriter out) {
		if (json) {
			Json.print(out, ReportJson.of(report));
		} else {
			TextTable.print(out, report);
			out.flush();
		}
	}
}
