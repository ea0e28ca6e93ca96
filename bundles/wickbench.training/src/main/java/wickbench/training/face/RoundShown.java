package wickbench.training.face;

import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.training.Agreement;
import wickbench.training.Compared;
import wickbench.training.Operating;
import wickbench.training.Round;
import wickbench.training.Skill;
import wickbench.training.round.RoundJson;
import wickbench.training.round.ScoreJson;

/** Rounds for machines; an unopened key never stands here. */
final class RoundShown {
    private RoundShown() {}

    static Json.Obj operating(Operating operating) {
        return Json.object()
                .with("strips", RoundJson.strips(operating.design()))
                .with("total", operating.design().total())
                .with("rule", RoundJson.rule(operating.design().rule()))
                .with("poor", skill(operating.poor()).with("passes", ScoreJson.number(operating.poorPasses())))
                .with("good", skill(operating.good()).with("fails", ScoreJson.number(operating.goodFails())))
                .with(
                        "curve",
                        Json.array(operating.curve().stream()
                                .map(point -> Json.object()
                                        .with("near", ScoreJson.number(point.near()))
                                        .with("passes", ScoreJson.number(point.passes())))
                                .toList()));
    }

    private static Json.Obj skill(Skill skill) {
        return Json.object()
                .with("near", ScoreJson.number(skill.near()))
                .with("clear", ScoreJson.number(skill.clear()))
                .with("alarm", ScoreJson.number(skill.alarm()))
                .with("invalid", ScoreJson.number(skill.invalid()));
    }

    static Json.Obj round(Round round) {
        Json.Obj called = Json.object();
        for (PersonId person : round.plan().callers()) {
            called = called.with(person.value(), round.callsOf(person).size());
        }
        Json.Obj photographs = Json.object();
        for (String code : round.codes()) {
            Hash picture = round.photographs().get(code);
            photographs = picture == null ? photographs : photographs.with(code, picture.hex());
        }
        return Json.object()
                .with("round", round.id())
                .with("state", round.state().code())
                .with("key_by", round.plan().keyMaker())
                .with("photographs", photographs)
                .with("method", round.plan().method().value())
                .with("opened", round.opened().toString())
                .with("strips", RoundJson.strips(round.plan().design()))
                .with("rule", RoundJson.rule(round.plan().design().rule()))
                .with("codes", Json.texts(round.codes()))
                .with("called", called)
                .with("commitment", round.commitment().hex())
                .withOptional("key_holds", round.keyHolds().map(Json.Bool::new))
                .withOptional("key", round.key().map(opened -> opened.key().json()))
                .with(
                        "scores",
                        Json.array(round.scores().stream().map(ScoreJson::score).toList()))
                .withText("scored", round.scored().map(Object::toString))
                .with(
                        "seen",
                        Json.texts(round.seen().stream()
                                .sorted()
                                .map(PersonId::value)
                                .toList()));
    }

    static Json.Obj agreement(Agreement agreement) {
        return ScoreJson.agreement(agreement);
    }

    static Json.Obj compared(Compared compared) {
        return Json.object()
                .with("reader", compared.reader().value())
                .with("first", compared.first())
                .with("second", compared.second())
                .with("shared", compared.shared())
                .with("right_in_first_only", compared.firstOnly())
                .with("right_in_second_only", compared.secondOnly())
                .withOptional("p_exact", compared.test().map(test -> ScoreJson.number(test.exactP())))
                .withOptional("chi_squared", compared.test().map(test -> ScoreJson.number(test.plain())));
    }
}
