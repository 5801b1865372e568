package org.garboard.exchange;

import java.util.List;
import javax.xml.datatype.DatatypeFactory;
import javax.xml.datatype.XMLGregorianCalendar;
import org.garboard.exchange.xml.record.Answer;
import org.garboard.exchange.xml.record.Boat;
import org.garboard.exchange.xml.record.Drawing;
import org.garboard.exchange.xml.record.File;
import org.garboard.exchange.xml.record.Further;
import org.garboard.exchange.xml.record.Issue;
import org.garboard.exchange.xml.record.Inputs;
import org.garboard.exchange.xml.record.Keel;
import org.garboard.exchange.xml.record.Knee;
import org.garboard.exchange.xml.record.Outputs;
import org.garboard.exchange.xml.record.PocketWish;
import org.garboard.exchange.xml.record.Record;
import org.garboard.exchange.xml.record.Transducer;
import org.garboard.job.DrawingWish;
import org.garboard.job.Job;
import org.garboard.mount.pocket.Floor;
import org.garboard.job.SitingRecord;

/** Turns a decision into the record's bean, top downward; its sitings and its pocket have their own. */
final class RecordMapping {

    private RecordMapping() {
    }

    static Record toBean(List<ToldDecision> all, RecordSource source, RecordOutputs outputs) {
        SitingRecord decided = all.get(0).decided();
        Job job = decided.job();
        Record bean = new Record();
        bean.setVersion(XmlKind.RECORD.version());
        bean.setProgramVersion(source.programVersion());
        bean.setInputs(inputs(source, job));
        bean.setBoat(boat(job));
        bean.setTransducer(transducer(job.transducer()));
        bean.setFeatures(FeatureMapping.toBean(decided.features()));
        job.particulars().craft().ifPresent(craft -> bean.setCraft(CraftMapping.toBean(craft, source.hull())));
        source.keel().ifPresent(keel -> bean.setKeel(keel(keel)));
        bean.setPocketWish(pocketWish(job.pocket()));
        bean.setDrawing(drawing(job.drawing()));
        bean.setAnswer(answer(all.get(0)));
        decided.sitings().forEach(siting -> bean.getSiting().add(SitingMapping.toBean(siting)));
        decided.pocket().ifPresent(pocket -> bean.setPocket(PocketMapping.toBean(pocket)));
        if (decided.pocket().isEmpty() && !decided.refusal().isEmpty()) {
            bean.setPocketRefused(decided.refusal());
        }
        all.stream().skip(1).forEach(each -> bean.getFurther().add(further(each)));
        bean.setSurface(SurfaceMapping.toBean(source.hull(), source.programVersion(), source.table()));
        bean.setOutputs(new Outputs());
        outputs.files().forEach(file -> bean.getOutputs().getFile().add(file(file)));
        bean.getOutputs().getRefused().addAll(outputs.refused());
        return bean;
    }

    private static Further further(ToldDecision told) {
        SitingRecord decided = told.decided();
        Further bean = new Further();
        bean.setTransducer(transducer(decided.job().transducer()));
        bean.setPocketWish(pocketWish(decided.job().pocket()));
        bean.setAnswer(answer(told));
        decided.sitings().forEach(siting -> bean.getSiting().add(SitingMapping.toBean(siting)));
        decided.pocket().ifPresent(pocket -> bean.setPocket(PocketMapping.toBean(pocket)));
        if (decided.pocket().isEmpty() && !decided.refusal().isEmpty()) {
            bean.setPocketRefused(decided.refusal());
        }
        return bean;
    }

    private static Inputs inputs(RecordSource source, Job job) {
        Inputs bean = new Inputs();
        bean.setJob(file(source.job()));
        bean.setTable(file(source.table()));
        bean.setFit(FitWords.word(job.fit()));
        return bean;
    }

    static File file(FileHash hash) {
        File bean = new File();
        bean.setName(hash.name());
        bean.setSha256(hash.sha256());
        return bean;
    }

    private static Boat boat(Job job) {
        Boat bean = new Boat();
        bean.setName(job.boat());
        bean.setHullNumber(job.hullNumber().isEmpty() ? null : job.hullNumber());
        bean.setDraughtM(Decimals.metres(job.draught()));
        return bean;
    }

    private static Transducer transducer(org.garboard.craft.Transducer body) {
        Transducer bean = new Transducer();
        bean.setName(body.name());
        bean.setLengthMm(Decimals.millimetres(body.length()));
        bean.setWidthMm(Decimals.millimetres(body.width()));
        bean.setHeightMm(Decimals.millimetres(body.height()));
        bean.setCornerRadiusMm(Decimals.millimetres(body.cornerRadius()));
        bean.setStemDiameterMm(Decimals.millimetres(body.stemDiameter()));
        bean.setElementInclinationDeg(Decimals.degrees(body.elementInclination().radians()));
        return bean;
    }

    private static Keel keel(org.garboard.appendage.Keel below) {
        Keel bean = new Keel();
        bean.setName(below.name());
        for (org.garboard.appendage.Keel.Knee place : below.bottom()) {
            Knee knee = new Knee();
            knee.setXM(Decimals.metres(place.x()));
            knee.setZM(Decimals.metres(place.z()));
            knee.setHalfSidingM(Decimals.metres(place.halfSiding()));
            bean.getKnee().add(knee);
        }
        return bean;
    }

    private static PocketWish pocketWish(org.garboard.mount.PocketWish wish) {
        PocketWish bean = new PocketWish();
        wish.depth().ifPresent(depth -> bean.setDepthMm(Decimals.millimetres(depth)));
        bean.setGapMm(Decimals.millimetres(wish.gap()));
        bean.setRampRatio(Decimals.fixed(wish.rampRatio(), 3));
        if (wish.aside() != 0) {
            bean.setAsideMm(Decimals.millimetres(wish.aside()));
        }
        if (wish.make().floor().lies() == Floor.Lies.SQUARE_TO_SKIN) {
            bean.setFloor("square-to-skin");
        }
        return bean;
    }

    private static Drawing drawing(DrawingWish wish) {
        Drawing bean = new Drawing();
        bean.setDate(date(wish.date()));
        bean.setUnits(DrawingWords.word(wish.units()));
        bean.setPaper(DrawingWords.word(wish.paper()));
        bean.setOrientation(DrawingWords.word(wish.orientation()));
        bean.setProjection(DrawingWords.word(wish.projection()));
        bean.setNumber(wish.number());
        bean.setOwner(wish.owner());
        bean.setCreator(wish.creator());
        bean.setApprover(wish.approver().isEmpty() ? null : wish.approver());
        bean.setRevision(wish.revision());
        wish.issues().forEach(issue -> bean.getIssue().add(issue(issue)));
        return bean;
    }

    private static Issue issue(org.garboard.job.Issue told) {
        Issue bean = new Issue();
        bean.setMark(told.mark());
        bean.setDate(date(told.date()));
        bean.setBy(told.by());
        bean.setValue(told.changed());
        return bean;
    }

    static XMLGregorianCalendar date(String iso) {
        return DatatypeFactory.newDefaultInstance().newXMLGregorianCalendar(iso);
    }

    private static Answer answer(ToldDecision told) {
        SitingRecord decided = told.decided();
        Answer bean = new Answer();
        bean.setValue(told.answer());
        bean.setPreference(decided.job().particulars().preference().word());
        decided.advised().ifPresent(siting -> bean.setMount(siting.mount().word()));
        bean.setChosenBy(decided.isGiven() ? "yard" : null);
        return bean;
    }
}
