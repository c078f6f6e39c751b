package newel.casefile;

import static newel.Shipped.CATALOGUE;
import static newel.Shipped.DEMANDS;
import static newel.Shipped.PRESETS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import newel.People;
import newel.Shipped;
import newel.body.Motion;
import newel.catalogue.Dose;
import newel.client.Client;
import newel.limit.Limit;
import newel.limit.Limitation;
import newel.limit.Limits;
import newel.limit.Share;
import newel.limit.Sided;
import newel.screen.Screening;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaseFileTest {
    private static final CaseReader READER = new CaseReader(PRESETS, People.TODAY);

    private static final String LEAST = """
            { "case": 1, "age": 74, "sex": "female", "statureCm": 160, "home": { "kit": ["chair"] }, "minutes": 25,
              "days": ["mon"], "goals": ["posture"]%s }""";

    @Test
    void what_is_written_is_read_back_and_written_the_same() {
        for (Client person : People.all()) {
            JsonNode once = CaseWriter.write(person, People.TODAY);

            Client read = assertInstanceOf(ReadCase.Read.class, READER.read(once.toString()))
                    .client();

            assertEquals(
                    once, CaseWriter.write(read, People.TODAY), person.profile().name());
            assertEquals(
                    Screening.of(person), Screening.of(read), person.profile().name());
        }
    }

    @Test
    void no_limit_comes_back_looser_than_it_was_written() {
        Client c = People.painfulShoulder();
        Limitation shoulder = c.limitations().getFirst();
        Limit tight = new Limit.Angle(Motion.SHOULDER_RAISE, Sided.RIGHT, 40);
        List<Limit> every = List.of(
                new Limit.Angle(Motion.HIP_FLEXION, Sided.LEFT, 85),
                new Limit.Load(newel.body.Joint.KNEE, Sided.BOTH, .03),
                new Limit.Positions(java.util.EnumSet.of(newel.catalogue.Position.SEATED_BACK)),
                new Limit.SupportNeeded(newel.catalogue.Support.TWO_HANDS),
                new Limit.Time(Limit.Lasting.STANDING, 60),
                new Limit.GripAtMost(Sided.LEFT, newel.catalogue.Grip.NONE),
                new Limit.NoWristWeight(Sided.RIGHT),
                new Limit.HeldAtMost(Sided.BOTH, .01),
                new Limit.CoordinationAtMost(1),
                new Limit.EffortAtMost(3),
                new Limit.Avoid(newel.limit.Avoidance.LYING_FLAT));
        List<Limitation> limitations =
                List.of(with(shoulder, shoulder.preset(), List.of(tight)), with(shoulder, "", every));
        Client client = new Client(
                c.id(),
                c.profile(),
                c.home(),
                c.wishes(),
                c.readiness(),
                c.falls(),
                c.vitals(),
                c.measures(),
                limitations);

        ReadCase read = READER.read(CaseWriter.write(client, People.TODAY).toString());

        Client back =
                assertInstanceOf(ReadCase.Read.class, read, read.toString()).client();
        assertEquals(
                List.of(List.of(tight), every),
                back.limitations().stream().map(Limitation::limits).toList());
        String unknown = ", \"limitations\": [{\"limits\": [{\"kind\": \"dragon\"}]}]";
        assertEquals(
                List.of("$.limitations[0].limits: one of these is not a limit that is known"),
                ((ReadCase.Faulty) READER.read(LEAST.formatted(unknown))).faults());
    }

    private static Limitation with(Limitation l, String preset, List<Limit> limits) {
        return new Limitation(
                l.id(), preset, l.words(), l.side(), l.source(), l.since(), l.review(), limits, l.cautions());
    }

    @Test
    void what_was_not_asked_is_not_known_and_never_no() {
        Client read = ((ReadCase.Read) READER.read(LEAST.formatted(""))).client();

        assertEquals(newel.client.ReadinessAnswers.notAsked(), read.readiness());
        assertEquals(newel.client.FallsAnswers.notAsked(), read.falls());
        assertEquals(newel.client.Answer.UNKNOWN, read.home().floor());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                ", \"age\": 12 | $: the same name stands twice at line 2; keep one of them",
                ", \"vitals\": \"flat | $: the file breaks off before its end; download it again",
                ", \"vitals\": \"flat\" | $.vitals: must be an object",
                ", \"measures\": [{\"test\": \"grip\", \"value\": 20, \"on\": \"1 May\"}] | $.measures[0].on: must be a day such as 2026-03-01",
                ", \"measures\": [{\"test\": \"grip\", \"value\": 20, \"unit\": \"cm\", \"on\": \"2026-03-01\"}] | $.measures[0].unit: this test is not measured in cm",
                ", \"measures\": [{\"test\": \"grip\", \"parts\": {\"tandem\": 3}, \"on\": \"2026-03-01\"}] | $.measures[0].parts: this test has one value and no parts",
                ", \"measures\": [{\"test\": \"sppb\", \"value\": 9, \"parts\": {\"side-by-side\": 10}, \"on\": \"2026-03-01\"}] | $.measures[0].value: the parts come to 1; leave value out or mend them",
                ", \"colour\": \"red\" | $: 'colour' is not part of a case file",
                ", \"vitals\": {\"systolic\": \"high\"} | $.vitals.systolic: must be a whole number",
                ", \"limitations\": [{\"preset\": \"dragon\"}] | $.limitations[0].preset: there is no preset dragon",
                ", \"limitations\": [{\"preset\": \"glaucoma\", \"since\": \"2026-02-30\"}] | $.limitations[0].since: there is no such day: 2026-02-30",
                ", \"limitations\": [{\"limit\": {\"joint\": \"tail\", \"motion\": \"wag\", \"maxDegrees\": 3}}] | $.limitations[0].limit: there is no motion wag of the tail",
                ", \"readiness\": {\"symptoms\": [\"SS1\", \"hiccups\"]} | $.readiness.symptoms[1]: there is no such sign: hiccups"
            })
    void each_fault_gets_one_line_with_its_path(String more, String line) {
        ReadCase.Faulty faulty = assertInstanceOf(ReadCase.Faulty.class, READER.read(LEAST.formatted(more)));

        assertEquals(List.of(line), faulty.faults());
    }

    @Test
    void several_faults_are_told_at_once() {
        ReadCase.Faulty faulty =
                assertInstanceOf(ReadCase.Faulty.class, READER.read("{\"case\": 1, \"age\": 7, \"minutes\": 200}"));

        assertEquals(
                List.of(
                        "$.age: must be at least 18",
                        "$.minutes: must be at most 60",
                        "$: 'days' is missing",
                        "$: 'goals' is missing",
                        "$: 'home' is missing",
                        "$: 'sex' is missing",
                        "$: 'statureCm' is missing"),
                faulty.faults());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`` | $: the file is empty",
                "{'case': 1} | $: this is not JSON; see line 1, character 2",
                "{\"case\": 1, \"age\": | $: the file breaks off before its end; download it again",
                "[] | $: must be an object"
            })
    void what_is_no_case_file_at_all_is_told_in_one_sentence(String text, String line) {
        ReadCase.Faulty faulty = assertInstanceOf(ReadCase.Faulty.class, READER.read(text));

        assertEquals(List.of(line), faulty.faults());
    }

    @Test
    void a_limit_of_ones_own_is_named_by_joint_and_motion() {
        String own =
                ", \"limitations\": [{\"limit\": {\"joint\": \"shoulder\", \"motion\": \"raise\", \"side\": \"right\","
                        + " \"maxDegrees\": 80}, \"source\": \"clinician\"}]";

        Client read = ((ReadCase.Read) READER.read(LEAST.formatted(own))).client();

        assertEquals(
                List.of(new Limit.Angle(Motion.SHOULDER_RAISE, Sided.RIGHT, 80)),
                read.limitations().getFirst().limits());
    }

    @Test
    void no_item_of_anybodys_program_breaks_a_limit() {
        CaseProgram programs = new CaseProgram(CATALOGUE, DEMANDS);
        for (Client person : People.all()) {
            Limits limits = Limits.of(
                    person.limitations(),
                    person.homeLimits(),
                    Screening.of(person).limits());
            List<JsonNode> items = new ArrayList<>();
            programs.of(person, People.TODAY)
                    .get("sessions")
                    .get(0)
                    .get("blocks")
                    .forEach(block -> block.get("items").forEach(items::add));

            assertTrue(
                    items.size() >= (Screening.of(person).withheld().isEmpty() ? 8 : 3),
                    person.profile().name() + " has " + items.size());
            for (JsonNode item : items) {
                JsonNode trim = item.get("adapted").get("trim");
                Share share =
                        new Share(trim.get("left").asDouble(), trim.get("right").asDouble());
                assertEquals(
                        List.of(),
                        Shipped.FITTING.broken(
                                Shipped.variant(item.get("variant").asText()), share, dose(item.get("dose")), limits),
                        person.profile().name());
            }
        }
    }

    @Test
    void a_session_carries_its_proof_and_each_item_its_runner_up() {
        JsonNode session = new CaseProgram(CATALOGUE, DEMANDS)
                .of(People.painfulShoulder(), People.TODAY)
                .get("sessions")
                .get(0);
        JsonNode proof = session.get("proof");

        assertTrue(proof.get("optimal").asBoolean());
        assertEquals(proof.get("score").asInt(), proof.get("bound").asInt());
        int counted = 0;
        int runnersUp = 0;
        for (JsonNode block : session.get("blocks")) {
            for (JsonNode item : block.get("items")) {
                for (JsonNode line : item.get("why")) {
                    counted += line.get("points").asInt();
                }
                JsonNode next = item.get("runnerUp");
                runnersUp += next.isNull() ? 0 : 1;
                assertTrue(next.isNull() || next.get("behind").asInt() >= 0, item.toString());
            }
        }
        assertTrue(runnersUp > 0, "some items have a runner-up");
        assertTrue(counted >= proof.get("score").asInt(), "what counts, less what changes between items cost");
    }

    private static Dose dose(JsonNode dose) {
        return new Dose(
                dose.get("sets").asInt(),
                dose.get("repetitions").asInt(),
                dose.get("seconds").asInt());
    }

    @Test
    void the_program_says_who_must_wait_and_to_whom_it_goes() {
        JsonNode waits = new CaseProgram(CATALOGUE, DEMANDS).of(People.mustBeReferred(), People.TODAY);
        JsonNode fit = new CaseProgram(CATALOGUE, DEMANDS).of(People.fitAndBored(), People.TODAY);

        assertEquals("wait", waits.get("readiness").get("outcome").asText());
        assertEquals("A1", waits.get("readiness").get("row").asText());
        assertEquals("routine", waits.get("referral").get(0).get("urgency").asText());
        assertEquals("Own doctor", waits.get("referral").get(0).get("to").asText());
        assertEquals("clear", fit.get("readiness").get("outcome").asText());
        assertEquals(0, fit.get("referral").size());
        assertEquals(4, fit.get("sessions").size());
    }

    /** Women of 74: 10 to 15 stands, and 10 to 16 curls only from 80 on (Rikli and Jones 1999). */
    @Test
    void a_measure_comes_back_with_its_score_band_norm_and_source() {
        String measures = ", \"measures\": [%s, %s, %s]"
                .formatted(
                        "{\"test\": \"chair-stand-30s\", \"value\": 9, \"on\": \"2026-03-01\"}",
                        "{\"test\": \"chair-stand-30s\", \"value\": 12, \"armsUsed\": true, \"on\": \"2026-03-01\"}",
                        "{\"test\": \"walk-6min\", \"value\": 400, \"unit\": \"m\", \"on\": \"2026-03-01\"}");
        Client client = assertInstanceOf(ReadCase.Read.class, READER.read(LEAST.formatted(measures)))
                .client();

        JsonNode out = CaseResults.of(client, People.TODAY);

        assertEquals(
                List.of("9 9 below 10 15", "12 0 below 10 15", "400 400 below 480 615"),
                List.of(0, 1, 2).stream()
                        .map(out::get)
                        .map(each -> "%s %s %s %s %s"
                                .formatted(
                                        each.get("value"),
                                        each.get("score"),
                                        each.get("band").asText(),
                                        each.get("norm").get("low"),
                                        each.get("norm").get("high")))
                        .toList());
        assertEquals("yd", out.get(2).get("publishedIn").asText());
        assertEquals(
                "Rikli RE, Jones CJ 1999, J Aging Phys Act 7:162-181; Senior Fitness Test Manual 2001, 2nd ed. 2013",
                out.get(0).get("source").asText());
        assertEquals(
                List.of("below", "below-average", "not-in-risk-zone", "below-criterion"),
                out.get(0).get("verdicts").findValuesAsText("band"));
    }

    @Test
    void how_a_test_was_done_is_written_and_read_back() {
        String measures = ", \"measures\": [%s, %s, %s]"
                .formatted(
                        "{\"test\": \"back-scratch\", \"value\": -10.5, \"unit\": \"cm\", \"on\": \"2026-03-01\", \"side\": \"left\"}",
                        "{\"test\": \"up-and-go-3m\", \"unable\": true, \"on\": \"2026-03-01\", \"aid\": \"frame\"}",
                        "{\"test\": \"sppb\", \"on\": \"2026-03-01\", \"parts\": {\"side-by-side\": 10, \"course\": 4, \"walk\": 4.81}}");
        Client client = assertInstanceOf(ReadCase.Read.class, READER.read(LEAST.formatted(measures)))
                .client();

        JsonNode written = CaseWriter.write(client, People.TODAY);

        assertEquals(
                "[{\"test\":\"back-scratch\",\"value\":-10.5,\"unit\":\"cm\",\"on\":\"2026-03-01\",\"side\":\"left\"},"
                        + "{\"test\":\"up-and-go-3m\",\"value\":0,\"on\":\"2026-03-01\",\"unable\":true,\"aid\":\"frame\"},"
                        + "{\"test\":\"sppb\",\"value\":5,\"on\":\"2026-03-01\","
                        + "\"parts\":{\"side-by-side\":10,\"course\":4,\"walk\":4.81}}]",
                written.get("measures").toString());
        assertEquals(
                client.measures(),
                assertInstanceOf(ReadCase.Read.class, READER.read(written.toString()))
                        .client()
                        .measures());
    }
}
