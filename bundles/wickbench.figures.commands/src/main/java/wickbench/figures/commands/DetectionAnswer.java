package wickbench.figures.commands;

import java.util.stream.IntStream;
import wickbench.api.json.Json;
import wickbench.figures.detection.DetectionCurve;
import wickbench.figures.detection.Levels;
import wickbench.figures.detection.Link;
import wickbench.figures.proportion.Interval;

/** What a curve of detection answers, with the table of detection that it was fitted to. */
final class DetectionAnswer {
    private DetectionAnswer() {}

    static Answer of(Levels study, DetectionCurve curve, double level) {
        Answer fitted = Answer.of()
                .with("link", curve.link().code())
                .with("dose", curve.dose().code())
                .with("coefficients", curve.coefficients())
                .with("se", curve.se())
                .withLimits("lod50", curve.lod50())
                .withLimits("lod95", curve.lod95())
                .with("deviance", curve.deviance())
                .with("df", curve.df())
                .with("misfit", misfit(curve))
                .with(
                        "blanks",
                        Json.object().with("tests", study.blankTests()).with("positives", study.blankPositives()))
                .with("levels", levels(study, curve, level))
                .saying(
                        curve.link() == Link.ONE_HIT
                                ? "detection.one-hit"
                                : "detection." + curve.link().code())
                .saying("detection.limits")
                .saying(curve.isFlagged() ? "detection.misfit" : "detection.deviance");
        return study.blankPositives() == 0 ? fitted : fitted.saying("detection.blanks", study.blankPositives());
    }

    private static Json misfit(DetectionCurve curve) {
        return Json.object()
                .with("test", "deviance")
                .with("p", Answer.number(curve.misfit()))
                .with("flagged", curve.isFlagged());
    }

    private static Json levels(Levels study, DetectionCurve curve, double level) {
        return Json.array(IntStream.range(0, study.levels().length)
                .mapToObj(i -> row(study, curve, level, i))
                .toList());
    }

    private static Json.Obj row(Levels study, DetectionCurve curve, double level, int i) {
        var pod = Interval.WILSON.of(study.positives()[i], study.tests()[i], level);
        return Json.object()
                .with("level", Answer.number(study.levels()[i]))
                .with("tests", study.tests()[i])
                .with("positives", study.positives()[i])
                .with("pod", Answer.number(pod.estimate()))
                .with("lower", Answer.number(pod.lower()))
                .with("upper", Answer.number(pod.upper()))
                .with("fitted", study.isBlank(i) ? Json.Null.NULL : Answer.number(curve.at(study.levels()[i])));
    }
}
