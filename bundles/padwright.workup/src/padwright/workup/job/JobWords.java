package padwright.workup.job;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;

import padwright.model.Resolved;
import padwright.model.keysystem.Joint;
import padwright.model.keysystem.Key;
import padwright.model.plan.Agreement;
import padwright.model.plan.Arrival;
import padwright.model.plan.BumperNote;
import padwright.model.plan.CupNote;
import padwright.model.plan.Delivery;
import padwright.model.plan.Deposit;
import padwright.model.plan.Estimate;
import padwright.model.plan.HeadCorkNote;
import padwright.model.plan.InternalNote;
import padwright.model.plan.Invoice;
import padwright.model.plan.JobEntry;
import padwright.model.plan.MechanismNote;
import padwright.model.plan.PadNote;
import padwright.model.plan.Photograph;
import padwright.model.plan.PlayTest;
import padwright.model.plan.RimNote;
import padwright.model.plan.SecondLook;
import padwright.model.plan.SpringNote;
import padwright.model.plan.StageReached;
import padwright.model.plan.TenonNote;
import padwright.model.plan.TesterReading;
import padwright.model.plan.Treatment;
import padwright.model.plan.Waiting;
import padwright.model.plan.WarrantyVisit;
import padwright.model.plan.WasherNote;
import padwright.model.plan.util.PlanSwitch;
import padwright.workup.parts.JointWords;
import padwright.workup.parts.Labels;
import padwright.workup.service.ServicePlan;
import padwright.workup.words.Days;
import padwright.workup.words.Messages;
import padwright.workup.words.Terms;

/** A line of the diary in the language of the reader, whatever words the text has for it: {@code Spring D♯: steel, replaced}. */
public final class JobWords {

	private final ServicePlan plan;
	private final FactList facts = new FactList();

	private JobWords(ServicePlan plan) {
		this.plan = plan;
	}

	/** Without its day and its hand, and without a full stop. */
	public static String of(ServicePlan plan, JobEntry entry) {
		JobWords words = new JobWords(plan);
		String thing = words.new Sorted().doSwitch(entry);
		return words.facts.behind(thing);
	}

	/** As {@link #of} with its day and its hand, as far as said. */
	public static String dated(ServicePlan plan, JobEntry entry) {
		String words = of(plan, entry);
		String day = entry.getDate() == null ? words : words + ", " + Days.of(entry.getDate());
		return entry.getHand() == null ? day : day + ", " + Messages.of("job.by", entry.getHand());
	}

	private String at(String thing, List<Key> keys) {
		String labels = keys.stream().flatMap(key -> Resolved.of(key).stream())
				.map(key -> Labels.ofKey(plan, key.getName())).collect(Collectors.joining(", "));
		return labels.isEmpty() ? thing : thing + " " + labels;
	}

	private String at(String thing, Key key) {
		return at(thing, Resolved.of(key).stream().toList());
	}

	private static String of(String thing, Joint joint) {
		return Resolved.of(joint).map(known -> thing + " " + JointWords.of(known)).orElse(thing);
	}

	/** Collects the facts of an entry, and tells what it is about. */
	private final class Sorted extends PlanSwitch<String> {

		@Override
		public String caseArrival(Arrival came) {
			facts.add(came.getComplaint());
			return Messages.of("job.came");
		}

		@Override
		public String casePlayTest(PlayTest test) {
			facts.add(Terms.of(test.getVerdict()) + " " + String.join(", ", test.getNotes()));
			return Messages.of("job.played", Terms.of(test.getPhase()));
		}

		@Override
		public String caseTesterReading(TesterReading read) {
			facts.addFigure(read.getLeak(), "job.leak");
			facts.addFigure(read.getPressure(), "job.pressure");
			return of(Messages.of("job.tester", Terms.of(read.getPhase())), read.getJoint());
		}

		@Override
		public String casePhotograph(Photograph photograph) {
			facts.add(photograph.getText());
			return at(Messages.of("job.photo"), photograph.getKey());
		}

		@Override
		public String caseMechanismNote(MechanismNote note) {
			facts.addLength(note.getFound(), note, "job.found");
			facts.addLength(note.getLeft(), note, "job.left");
			facts.add(note.getText());
			return at(Messages.of("job.mechanism", Terms.of(note.getPart())), note.getKeys());
		}

		@Override
		public String caseSpringNote(SpringNote note) {
			if (note.isSetMetal()) {
				facts.add(note.getMetal());
			}
			facts.add(note.isReplaced(), "job.replaced");
			facts.addFigure(note.getFound(), "job.foundGrams");
			facts.addFigure(note.getLeft(), "job.leftGrams");
			return at(Messages.of("job.spring"), note.getKeys());
		}

		@Override
		public String caseBumperNote(BumperNote note) {
			if (note.isSetMaterial()) {
				facts.add(note.getMaterial());
			}
			facts.addMillimetres(note.getThickness(), note, 2, "job.thick");
			facts.add(note.isReplaced(), "job.replaced");
			return at(Messages.of("job.bumper"), note.getKeys());
		}

		@Override
		public String caseTenonNote(TenonNote note) {
			facts.add(note.getWork());
			facts.addLength(note.getGap(), note);
			return of(Messages.of("job.tenon"), note.getJoint());
		}

		@Override
		public String caseHeadCorkNote(HeadCorkNote note) {
			facts.add(note.isReplaced(), "job.replaced");
			facts.addMillimetres(note.getPosition(), note, 1, "job.atMillimetres");
			return Messages.of("job.headCork");
		}

		@Override
		public String caseRimNote(RimNote note) {
			facts.add(note.getState());
			facts.addLength(note.getAmount(), note);
			facts.addHours(note.getHours());
			facts.addLength(note.getLeft(), note, "job.left");
			return at(Messages.of("job.rim"), note.getKey());
		}

		@Override
		public String caseCupNote(CupNote note) {
			facts.add(note.getPlace());
			facts.addLength(note.getAmount(), note);
			facts.addHours(note.getHours());
			facts.addLength(note.getLeft(), note, "job.left");
			return at(Messages.of("job.cup"), note.getKey());
		}

		@Override
		public String casePadNote(PadNote note) {
			facts.add(note.getWork());
			return at(Messages.of("job.pad"), note.getKeys());
		}

		@Override
		public String caseWasherNote(WasherNote note) {
			facts.add(note.getWasher());
			facts.addFigure(note.getTorque(), "job.torque");
			return at(Messages.of("job.washer"), note.getKeys());
		}

		@Override
		public String caseTreatment(Treatment treatment) {
			facts.add(treatment.getKind());
			return at(Messages.of("job.pad"), treatment.getKeys());
		}

		@Override
		public String caseStageReached(StageReached stage) {
			facts.addFigure(stage.getMinutes(), "job.minutes");
			return Messages.of("job.stage", JobRecord.label(plan.plan(), stage));
		}

		@Override
		public String caseWaiting(Waiting waiting) {
			facts.addDay(waiting.getOver(), "job.over");
			return WaitWords.of(waiting);
		}

		@Override
		public String caseEstimate(Estimate estimate) {
			estimate.getOptions().forEach(option -> facts.add(option.getLabel() == null ? option.getName() : option.getLabel()));
			return Messages.of("job.estimate");
		}

		@Override
		public String caseAgreement(Agreement agreement) {
			facts.add(agreement.getOption());
			return Messages.of("job.agreed");
		}

		@Override
		public String caseDeposit(Deposit deposit) {
			facts.add(deposit.getAmount() == null ? "" : FactList.figure(deposit.getAmount()));
			return Messages.of("job.deposit");
		}

		@Override
		public String caseInvoice(Invoice invoice) {
			invoice.getItems().forEach(item -> facts.add(item.getText()));
			return Messages.of("job.invoice", invoice.getNumber());
		}

		@Override
		public String caseDelivery(Delivery delivery) {
			return Messages.of("job.delivered");
		}

		@Override
		public String caseSecondLook(SecondLook look) {
			facts.addDay(look.getDate() == null ? look.getDue() : null, "job.due");
			return Messages.of("job.secondLook");
		}

		@Override
		public String caseWarrantyVisit(WarrantyVisit visit) {
			return Messages.of("job.warranty", visit.getService());
		}

		@Override
		public String caseInternalNote(InternalNote note) {
			facts.add(note.getText());
			return Messages.of("job.internal");
		}

		@Override
		public String defaultCase(EObject entry) {
			throw new IllegalArgumentException("no words for " + entry.eClass().getName());
		}
	}
}
