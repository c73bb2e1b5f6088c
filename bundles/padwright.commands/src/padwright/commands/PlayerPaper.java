package padwright.commands;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;

import padwright.language.shop.ShopFinding;
import padwright.paper.money.MoneyPages;
import padwright.paper.money.MoneySheet;
import padwright.paper.page.Letterhead;
import padwright.paper.plan.UndoneWorkException;
import padwright.workup.service.ServicePlan;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A command that draws an estimate or an invoice of one plan. */
abstract class PlayerPaper implements Callable<Integer>, DrawsPaper {

	private final String name;
	private final Function<ServicePlan, MoneySheet> sheet;

	@Parameters(paramLabel = "PLAN", description = "A .plan file; FILE#NAME for one of several plans in it.")
	Path file;

	@Mixin
	private PaperOptions paper;

	@Spec
	CommandSpec spec;

	/** @param name of the paper, behind that of the plan */
	PlayerPaper(String name, Function<ServicePlan, MoneySheet> sheet) {
		this.name = name;
		this.sheet = sheet;
	}

	@Override
	public Integer call() {
		PrintWriter err = spec.commandLine().getErr();
		LoadedShop shop = LoadedShop.around(file);
		ServicePlan plan = shop.plan();
		List<ShopFinding> errors = shop.errors(plan);
		FindingLines.print(err, errors);
		try {
			MoneySheet drawn = sheet.apply(plan);
			tell(drawn.head().letterhead(), err);
			paper.write(plan.plan().getName() + "-" + name, drawn.title(), new MoneyPages(drawn, paper.paper()).pages(),
					spec.commandLine().getOut());
			return errors.isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
		} catch (UndoneWorkException undone) {
			return refuse(plan.plan().getName(), undone, err);
		} catch (IllegalArgumentException nothing) {
			throw new InputException(ShownPath.of(shop.file()) + ": " + nothing.getMessage());
		}
	}

	/** Tells of a logo that was left out. */
	static void tell(Letterhead letterhead, PrintWriter err) {
		letterhead.trouble().ifPresent(err::println);
	}

	/** Tells why there is no page. */
	static int refuse(String plan, UndoneWorkException undone, PrintWriter err) {
		err.println("no page for " + plan + ": it would promise more than the plan says is done");
		undone.open().forEach(work -> err.println("  " + work + "."));
		return ExitStatus.FINDINGS;
	}
}
