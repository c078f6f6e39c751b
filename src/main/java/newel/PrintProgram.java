package newel;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import newel.casefile.CaseProgram;
import newel.casefile.CaseReader;
import newel.casefile.CaseSchema;
import newel.casefile.ReadCase;
import newel.catalogue.Catalogues;
import newel.limit.Presets;
import newel.limit.VariantDemands;

/** {@code newel program CASE.json}: the program for a case file, as JSON; {@code --schema} prints its schema. */
final class PrintProgram {
    private static final ObjectMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        if (arguments.size() != 1) {
            err.println("newel program: name one case file, or --schema");
            return Newel.REFUSED;
        }
        if (arguments.getFirst().equals("--schema")) {
            out.print(CaseSchema.text());
            return Newel.DONE;
        }
        try {
            return print(Files.readString(Path.of(arguments.getFirst())), out, err);
        } catch (NoSuchFileException e) {
            err.println("newel program: there is no file " + e.getMessage());
        } catch (CharacterCodingException e) {
            err.println("newel program: the file is not text in UTF-8");
        } catch (IOException e) {
            err.println("newel program: the file cannot be read: " + e.getMessage());
        }
        return Newel.REFUSED;
    }

    private static int print(String text, PrintStream out, PrintStream err) throws JsonProcessingException {
        LocalDate today = LocalDate.now();
        return switch (new CaseReader(Presets.read(), today).read(text)) {
            case ReadCase.Faulty faulty -> {
                faulty.faults().forEach(err::println);
                yield Newel.REFUSED;
            }
            case ReadCase.Read read -> {
                CaseProgram program = new CaseProgram(Catalogues.read().orStop(), VariantDemands.ofBody());
                out.println(JSON.writeValueAsString(program.of(read.client(), today)));
                yield Newel.DONE;
            }
        };
    }

    private PrintProgram() {}
}
