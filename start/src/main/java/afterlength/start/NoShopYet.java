package afterlength.start;

import afterlength.craft.units.Problem;
import afterlength.start.document.Reply;
import java.util.List;

/** Stands where the shop will be opened; refuses options, which nobody knows yet. */
final class NoShopYet implements Command {
    @Override
    public String summary() {
        return "opens the shop in the browser";
    }

    @Override
    public int run(List<String> arguments, Console console) {
        if (arguments.isEmpty()) {
            console.say("afterlength: this build has no shop to open; the verbs work, see --help");
            return Exit.OUR_FAULT;
        }
        String option = arguments.get(0);
        console.answer(new Reply.Refused(List.of(new Problem(
                        "", option, "There is no option \"" + option + "\". Type --help to see what there is.")))
                .json());
        return Exit.REFUSED;
    }
}
