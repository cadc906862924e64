#include "app/arguments/arguments.h"

#include "tests/app/program.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

const VerbSpec& spec() {
  static const VerbSpec verb{"dig", "FIELD", "digs", {{"--deep", "CM", "how deep"}, {"--dry", "", "no water"}}, ""};
  return verb;
}

std::string errorOf(const std::function<void()>& act) {
  try {
    act();
  } catch (const BadInput& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "";
}

TEST(Arguments, TakesBothFormsAndNegativeNumbers) {
  const auto given = parseArguments(spec(), {"--deep=-3", "north", "--dry", "--deep", "-4.5"});
  EXPECT_EQ(given.file, "north");
  EXPECT_TRUE(given.has("--dry"));
  EXPECT_EQ(given.find("--deep"), "-4.5");
  EXPECT_EQ(given.options.front().value, "-3");
  EXPECT_FALSE(given.has("--wide"));
}

TEST(Arguments, TellsEveryFaultAtOnce) {
  const auto error = errorOf([] { parseArguments(spec(), {"--wide", "--dry=yes", "a", "b", "--deep"}); });
  EXPECT_THAT(error,
              AllOf(HasSubstr("unknown option --wide; dig knows --deep, --dry"), HasSubstr("--dry takes no value"),
                    HasSubstr("'b' is one file too many"), HasSubstr("--deep needs a value: --deep CM")));
  EXPECT_THAT(errorOf([] { parseArguments(spec(), {}); }), HasSubstr("the FIELD is missing"));
}

TEST(Arguments, FaultsAreValues) {
  try {
    parseArguments(spec(), {"a", "--wide"});
    FAIL() << "taken";
  } catch (const BadInput& error) {
    EXPECT_EQ(error.reason(),
              reason::Reason(fault::kUnknownOption, {reason::text("--wide"), reason::text("dig"),
                                                     reason::list({reason::text("--deep"), reason::text("--dry")})}));
  }
}

TEST(Arguments, OptionsKeepTheirOrderAndRepeat) {
  const auto given = parseArguments(spec(), {"--deep", "1", "a", "--dry", "--deep=2", "--deep", ""});
  ASSERT_EQ(given.options.size(), 4U);
  EXPECT_EQ(given.options[0].value, "1");
  EXPECT_EQ(given.options[1].name, "--dry");
  EXPECT_EQ(given.options[2].value, "2");
  EXPECT_EQ(given.find("--deep"), "");
}

TEST(Arguments, NamesOfFilesNeedNotBeUtf8) {
  EXPECT_EQ(parseArguments(spec(), {"caf\xE9.zyga", "--deep=\xC3\xA9\xFF"}).file, "caf\xE9.zyga");
  EXPECT_EQ(parseArguments(spec(), {"a", "--deep=\xC3\xA9\xFF"}).find("--deep"), "\xC3\xA9\xFF");
}

TEST(Arguments, AFileInBracketsMayBeLeftOut) {
  const VerbSpec verb{.name = "rest", .file = "[BED]", .does = "rests", .options = {}, .notes = ""};
  EXPECT_EQ(parseArguments(verb, {}).file, "");
  EXPECT_EQ(parseArguments(verb, {"moss"}).file, "moss");
}

TEST(Arguments, AnOptionDoesNotSwallowTheNextOne) {
  EXPECT_THAT(errorOf([] { parseArguments(spec(), {"a", "--deep", "--dry"}); }), HasSubstr("--deep needs a value"));
}

TEST(Arguments, Numbers) {
  EXPECT_EQ(numberOf({"--deep", "+1.5e1"}, 0, 20, "cm"), 15);
  for (const char* text : {"", "abc", "1,5", "5 cm", "nan", "inf", "0x10"}) {
    EXPECT_THAT(errorOf([&] {
                  numberOf({"--deep", text}, -90, 90, "cm");
                }),
                HasSubstr("--deep: '" + std::string(text) + "' is not a number; write cm from -90 to 90"));
  }
  EXPECT_THAT(errorOf([] { numberOf({"--deep", "91"}, -90, 90, "cm"); }), HasSubstr("from -90 to 90"));
}

Arguments given(std::vector<GivenOption> options) {
  Arguments arguments;
  arguments.options = std::move(options);
  return arguments;
}

TEST(Arguments, Choices) {
  const std::vector<std::pair<std::string_view, int>> words{{"clay", 1}, {"sand", 2}};
  EXPECT_EQ(choiceOf<int>(given({}), "--soil", words), 1);
  EXPECT_EQ(choiceOf<int>(given({{"--soil", "sand"}}), "--soil", words), 2);
  EXPECT_THAT(errorOf([&] {
                choiceOf<int>(given({{"--soil", "mud"}}), "--soil", words);
              }),
              HasSubstr("--soil: 'mud' is not among clay, sand"));
}

class CommandLine : public Program {};

TEST_F(CommandLine, HelpAndVersion) {
  EXPECT_THAT(run({"help"}).out, AllOf(HasSubstr("make"), HasSubstr("assess"), HasSubstr("bend"), HasSubstr("export"),
                                       HasSubstr("picture")));
  EXPECT_THAT(run({"help", "bend"}).out, AllOf(HasSubstr("--joint C6-C7"), HasSubstr("--span C2-C13")));
  EXPECT_EQ(run({"bend", "--help"}).out, run({"help", "bend"}).out);
  const auto version = run({"--version"});
  EXPECT_EQ(version.exit, 0);
  EXPECT_THAT(version.out, testing::MatchesRegex("zygapose [0-9.]+\n"));
}

TEST_F(CommandLine, MistypedVerbIsTold) {
  const auto ended = run({"asess", "a.zyga"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_THAT(ended.err, AllOf(HasSubstr("no verb 'asess'"), HasSubstr("assess")));
  EXPECT_EQ(run({"help", "asess"}).exit, 2);
}

TEST_F(CommandLine, FaultsGoToStderrWithExitTwo) {
  const auto ended = run({"assess", "nowhere.zyga"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_EQ(ended.out, "");
  EXPECT_THAT(ended.err, AllOf(HasSubstr("zygapose assess: "), HasSubstr("nowhere.zyga"), HasSubstr("no such file")));
  EXPECT_THAT(run({"assess"}).err, HasSubstr("the FILE.zyga is missing"));
  EXPECT_THAT(run({"export", "a.zyga"}).err, HasSubstr("--out is missing: --out FILE"));
}

TEST_F(CommandLine, FullOutputIsAFault) {
  smallAnimal();
  // /dev/full answers every write as a full disk does.
  QProcess shell;
  shell.setWorkingDirectory(QString::fromStdString(path("").string()));
  shell.start("sh", {"-c", QString(ZYGAPOSE_PROGRAM) + " assess small.zyga > /dev/full"});
  ASSERT_TRUE(shell.waitForFinished(60000));
  EXPECT_EQ(shell.exitCode(), 2);
}

}  // namespace
}  // namespace zyga::app
