#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <map>
#include <set>
#include <sstream>

#include "app/verbs/offscreen.h"
#include "app/verbs/run_verb.h"
#include "app/verbs/verbs.h"
#include "core/files/project/project.h"
#include "tests/support/marked_language.h"

// Every word that a verb prints for a person has gone through a translation, in help, in answers and in complaints. The
// verbs are run within this program, in a language made by the tests.
namespace zyga::app {
namespace {

using Words = std::vector<std::string>;

/// The marked language, above whichever a verb speaks: that is installed anew with every run.
class MarkedAbove : public QObject {
 public:
  MarkedAbove() { QCoreApplication::instance()->installEventFilter(this); }
  ~MarkedAbove() override { raising_ = true; }

  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::LanguageChange && !raising_) {
      raising_ = true;
      QCoreApplication::removeTranslator(&language_);
      QCoreApplication::installTranslator(&language_);
      raising_ = false;
    }
    return false;
  }

 private:
  test::MarkedLanguage language_;
  bool raising_ = false;
};

/// What is written to a stream of the library.
class Captured {
 public:
  explicit Captured(std::ostream& stream) : stream_(stream), before_(stream.rdbuf(written_.rdbuf())) {}
  ~Captured() { stream_.rdbuf(before_); }
  QString text() const { return QString::fromStdString(written_.str()); }

 private:
  std::ostringstream written_;
  std::ostream& stream_;
  std::streambuf* before_;
};

struct Said {
  int exit = -1;
  QString out, err;
};

/// Runs of each verb that show most of what it has to say: TABLE is the measurement table, animal.zyga a project of it
/// in its neutral pose, bent.zyga one with joints out of range and claims, scanned.zyga one with a scan that is gone.
struct Runs {
  std::vector<Words> ofBoth;  ///< on both samples
  /// On a small animal alone: what sculpts, traces or draws takes more than 5 s with a sample.
  std::vector<Words> ofSmall = {};
};

const std::map<std::string, Runs>& usualRuns() {
  static const std::map<std::string, Runs> runs{
      {"make",
       {{{"TABLE", "--out", "made.zyga"}, {"TABLE", "--out", "made.zyga", "--json"}},
        {{"--blank", "blank1.csv"}, {"--blank", "blank2.csv", "--plan", "mammal", "--json"}}}},
      {"assess",
       {{{"animal.zyga", "--no-contact"},
         {"bent.zyga", "--no-contact"},
         {"bent.zyga", "--json", "--pose", "neutral standing", "--no-contact"},
         {"bent.zyga", "--json", "--overlap", "0.7", "--cartilage-percent", "4", "--neutral-by", "facets-and-centra",
          "--no-contact"}},
        {{"bent.zyga", "--contact"}, {"bent.zyga", "--contact", "--json"}}}},
      {"neutral", {{{"animal.zyga", "--out", "o.zyga", "--cartilage-percent", "9"}, {"animal.zyga", "--json"}}}},
      {"limits",
       {{{"animal.zyga", "--no-contact"},
         {"animal.zyga", "--json", "--no-contact"},
         {"bent.zyga", "--joint", "C3-C4", "--joint", "knee.L", "--from-pose", "--no-contact"}},
        {{"animal.zyga", "--joint", "C3-C4", "--contact"}}}},
      {"stand",
       {{{"bent.zyga", "--out", "o.zyga", "--no-contact"},
         {"animal.zyga", "--out", "o.zyga", "--stance", "drink", "--no-contact"},
         {"animal.zyga", "--out", "o.zyga", "--stance", "rear", "--json", "--no-contact"}}}},
      {"reach",
       {{{"animal.zyga", "--bone", "skull", "--to", "4,0,0.3", "--out", "o.zyga", "--gaze", "keep", "--no-contact"},
         {"animal.zyga", "--bone", "skull", "--to", "40,0,30", "--out", "o.zyga", "--no-contact"},
         {"animal.zyga", "--bone", "skull", "--to", "40,9,30", "--out", "o.zyga", "--free", "--no-contact"},
         {"animal.zyga", "--bone", "skull", "--to", "1,1,0.3", "--out", "o.zyga", "--json", "--lock", "C3-C4",
          "--no-contact"}}}},
      {"bend",
       {{{"animal.zyga", "--joint", "C3-C4", "--dorsiflexion", "40", "--out", "o.zyga"},
         {"animal.zyga", "--span", "C2-C5", "--lateral", "80", "--out", "o.zyga", "--pose", "neutral standing"}}}},
      {"export",
       {{},
        {{"animal.zyga", "--out", "o.glb", "--triangles", "200"},
         {"animal.zyga", "--out", "o.stl", "--watertight", "--voxel-mm", "150", "--fill-joints", "--body-guide"},
         {"scanned.zyga", "--out", "o.obj", "--triangles", "200"}}}},
      {"inspect", {{}, {{"C6.ply"}, {"C6.ply", "--json"}, {"box.obj", "--unit", "cm"}, {"holes.obj"}}}},
      {"picture",
       {{},
        {{"animal.zyga", "--view", "left", "--out", "o.png", "--width", "64"},
         {"animal.zyga", "--view", "left", "--out", "o.png", "--width", "64", "--passes", "depth,bones", "--lens-mm",
          "50", "--horizon", "--distance-m", "2"},
         {"animal.zyga", "--view", "ventral", "--out", "o.png", "--width", "64", "--bones", "neck", "--look-at", "C5"},
         {"animal.zyga", "--view", "left", "--out", "o.png", "--width", "64", "--body-guide"}}}},
      {"sheet",
       {{},
        {{"animal.zyga", "--out", "o.svg", "--paper", "a4", "--bones", "silhouette", "--no-contact"},
         {"animal.zyga", "--out", "o.svg", "--paper", "a4", "--plate", "C5"},
         {"animal.zyga", "--out", "o.svg", "--paper", "a4", "--bones", "in-body", "--no-contact"}}}},
      {"scan",
       {{{"C6.ply", "C5.ply", "--landmarks", "landmarks.csv", "--into", "animal.zyga", "--out", "o.zyga", "--measures"},
         {"box.obj", "--bone", "femur.L", "--into", "scanned.zyga", "--out", "o.zyga", "--measures"},
         {"C5.ply", "C6.ply", "--suggest", "--landmarks-out", "l.csv", "--facets-out", "f.csv", "--into", "animal.zyga",
          "--out", "o.zyga"},
         {".", "--suggest", "--json", "--unit", "mm", "--landmarks", "landmarks.csv", "--into", "animal.zyga", "--out",
          "o.zyga"}}}},
      {"trackway", {{}, {{"tracks.csv"}, {"tracks.csv", "--json", "--hip-multiplier", "4.586"}}}},
      {"compare",
       {{{"animal.zyga", "bent.zyga", "--no-contact"},
         {"bent.zyga", "--first", "neutral standing", "--no-contact"},
         {"bent.zyga", "animal.zyga", "--json", "--no-contact"}}}},
      // A whole report traces a large picture for a minute, and then says no more than this.
      {"report", {{}, {{"bent.zyga", "--out", "o.html", "--claims-only", "--numbers", "o.csv", "--no-contact"}}}},
      {"mass",
       {{{"animal.zyga"},
         {"bent.zyga", "--json", "--density", "neck=600"},
         {"--humerus-mm", "785", "--femur-mm", "910"},
         {"--humerus-mm", "785", "--femur-mm", "910", "--json"}}}},
      {"study",
       {{{"animal.zyga", "--kind", "elevation", "--no-contact"},
         {"animal.zyga", "--kind", "range", "--json", "--no-contact"},
         {"animal.zyga", "--kind", "spread", "--draws", "3", "--plot", "o.svg", "--no-contact"},
         {"bent.zyga", "--kind", "pressure", "--out", "o.json", "--no-contact"}},
        {{"animal.zyga", "--kind", "envelope", "--outline-only", "--no-contact"}}}},
      {"claim",
       {{{"animal.zyga", "--head-height-m", "3", "--out", "o.zyga", "--source", "typed words", "--no-contact"},
         {"animal.zyga", "--head-height-m", "30", "--no-contact"},
         {"animal.zyga", "--neck-slope-deg", "80", "--at-most", "--no-contact", "--samples", "1000", "--seed", "2"}},
        {{"animal.zyga", "--neck-base-deg", "90", "--json", "--no-contact"},
         {"bent.zyga", "--ground-ahead-m", "1", "--no-contact"},
         {"animal.zyga", "--head-at-m", "2,3.5", "--no-contact"},
         {"animal.zyga", "--tail-base-deg", "1", "--no-contact"},
         {"animal.zyga", "--head-height-m", "30", "--overlap", "1", "--cartilage-percent", "20", "--no-contact"},
         {"animal.zyga", "--head-height-m", "2", "--contact"},
         {"animal.zyga", "--head-height-m", "2", "--contact", "--json"},
         {"bent.zyga", "--no-contact"},
         {"bent.zyga", "--json", "--no-contact"}}}}};
  return runs;
}

/// Of a file that a verb takes, by its placeholder: some that cannot be read.
std::vector<std::string> brokenFiles(std::string_view placeholder) {
  if (placeholder.find(".zyga") != std::string_view::npos)
    return {"cut.zyga", "empty.zyga", "newer.zyga", "other.zyga"};
  if (placeholder.find(".csv") != std::string_view::npos) return {"empty.csv", "holes.csv"};
  return {"cut.ply", "empty.obj", "letter.txt"};
}

/// Keys of JSON whose values are ids, names or paths, the same in every language; what other keys hold is said to
/// people.
bool holdsId(const QString& key) {
  static const QStringList keys{"specimen", "pose",          "file",       "first",      "second",     "from",
                                "id",       "region",        "level",      "bone",       "other",      "foot",
                                "planted",  "unit",          "overlap_by", "chain",      "neutral_by", "direction",
                                "stance",   "reading",       "part",       "unit_guess", "up_guess",   "circumferences",
                                "kind",     "horizontal_by", "likelihood", "evidence",   "axial",      "set_by",
                                "unit_by",  "landmark",      "facet",      "mark",       "correction", "to"};
  return keys.contains(key) || key.endsWith("_level");
}

class MarkedProgram : public testing::Test {
 protected:
  static void SetUpTestSuite() {
    application_ = std::make_unique<Offscreen>(true);
    marked_ = std::make_unique<MarkedAbove>();
  }
  static void TearDownTestSuite() {
    marked_.reset();
    application_.reset();
  }

  void SetUp() override {
    qputenv("XDG_CACHE_HOME", ZYGAPOSE_TEST_CACHE);
    ASSERT_TRUE(QDir::setCurrent(folder_.path()));
    write("cut.zyga", "{\"zygapose\": 1, \"specimen\": {");
    write("empty.zyga", "");
    write("newer.zyga", "{\"zygapose\": 99}");
    write("other.zyga", "{\"letters\": [1, 2]}");
    write("empty.csv", "");
    write("holes.csv",
          "# specimen: Hopeful\n# plan: nothing\nbone,length (mm),evidence,source\nC99,abc,guessed,\n,1,,\n");
    write("cut.ply", "ply\nformat ascii 1.0\nelement vertex 99999999\nproperty float x\nend_header\n");
    write("empty.obj", "");
    write("letter.txt", "a letter");
    const std::string box =
        "v 0 0 0\nv 300 0 0\nv 300 100 0\nv 0 100 0\nv 0 0 120\nv 300 0 120\nv 300 100 120\nv 0 100 120\n"
        "f 1 4 3 2\nf 5 6 7 8\nf 1 2 6 5\nf 3 4 8 7\nf 1 5 8 4\n";
    write("small.csv",
          "# specimen: Small invented animal\n# plan: high browser\n"
          "# cervicals: 6\n# dorsals: 9\n# sacrals: 4\n# caudals: 12\n"
          "bone,length (mm),evidence,source\nC3,300,found,invented\nC4,310,found,invented\n");
    write("box.obj", box + "f 2 3 7 6\n");
    write("holes.obj", box + "v 0 0 0.00001\n");
    // Xing et al. 2016, Swiss J. Geosci., table 1; the last row is bare.
    write(
        "tracks.csv",
        "foot,pace_cm,next_pace_cm,stride_cm,length_cm\nLP1,62.0,66.0,106.0,33.0\nRP1,66.0,72.0,104.0,35.0\nLP3,,,,\n");
    for (const char* file : {"C5.ply", "C6.ply", "landmarks.csv"})
      ASSERT_TRUE(QFile::copy(QString(ZYGAPOSE_SOURCE_DIR "/samples/scans/") + file, file));
  }
  void TearDown() override {
    QDir::setCurrent(QDir::tempPath());
    qunsetenv("XDG_CACHE_HOME");
  }

  static void write(const std::string& name, const std::string& text) { std::ofstream(name) << text; }

  static Said run(Words words) {
    words.insert(words.begin(), "zygapose");
    std::vector<char*> argv;
    for (std::string& word : words) argv.push_back(word.data());
    argv.push_back(nullptr);
    const Captured out(std::cout), err(std::cerr);
    const int exit = runVerb(static_cast<int>(words.size()), argv.data());
    return {exit, out.text(), err.text()};
  }

  /// Projects of a sample, as usualRuns() has them.
  void makeProjects(const std::string& table) {
    table_ = table;
    ASSERT_EQ(run({"make", table, "--out", "animal.zyga"}).exit, 0);
    ASSERT_EQ(run({"bend", "animal.zyga", "--joint", "C3-C4", "--dorsiflexion", "40", "--joint", "knee.L",
                   "--dorsiflexion", "-100", "--span", "Ca2-Ca9", "--lateral", "90", "--out", "bent.zyga"})
                  .exit,
              0);
    files::Project project = files::readProject("bent.zyga");
    for (const study::ClaimKind kind : {study::ClaimKind::HeadHeight, study::ClaimKind::NeckSlope})
      project.claims.push_back({kind});
    files::saveProject(project, "bent.zyga");
    ASSERT_EQ(run({"scan", "C6.ply", "--into", "animal.zyga", "--out", "scanned.zyga"}).exit, 0);
    std::filesystem::remove_all("scans");
    for (const auto& bone : project.specimen().bones) ids_.insert(QString::fromStdString(bone.id));
    for (const auto& joint : project.specimen().joints) ids_.insert(QString::fromStdString(joint.id));
    name_ = QString::fromStdString(project.specimen().name);
  }

  Words withTable(Words words) const {
    std::replace(words.begin(), words.end(), std::string("TABLE"), table_);
    return words;
  }

  /// Takes out what is the same in every language but would look like words: names of options, what the program and the
  /// verb are called where they begin a line, and what a person has typed.
  QString withoutNames(QString text) const {
    static const QRegularExpression option("--[a-z][a-z-]*"),
        speaker("^zygapose( [a-z]+)?(?=[: ])", QRegularExpression::MultilineOption);
    text.remove(speaker);
    text.remove(option);
    for (const QString& typed : {name_, QString("neutral standing"), QString("typed words"), QString("nonsense"),
                                 // The system says this itself.
                                 QString(std::strerror(ENOENT))})
      if (!typed.isEmpty()) text.replace(typed, " ");
    // Lists of the ids that an option takes, of a project's poses, of parts of a skeleton and of the verbs there are.
    for (const char* before :
         {"' is no bone of this animal and no part of it; write ids such as C5 or humerus.L, or parts (",
          "' is not among ", " has no landmark '", "'; it has ", "' is not a part and its number; write ", ", one of ",
          "; near it are ", "'; there are "})
      text.remove(QRegularExpression(QRegularExpression::escape(test::kMarked + QString(before) + test::kMarkedEnd) +
                                     QString("[^\n%1]*").arg(test::kMarked)));
    // What is marked parts the words beside it.
    static const QRegularExpression marked(QString("%1[^%1%2]*%2").arg(test::kMarked).arg(test::kMarkedEnd));
    for (QString before; before != text;) {
      before = text;
      text.replace(marked, " ");
    }
    return text;
  }

  /// Ids of bones and joints, units, formats and files. `named`: what this run was given, and placeholders that it may
  /// name.
  bool exempt(const QString& word, const QStringList& named) const {
    static const QStringList known{"mm", "cm", "km", "kg", "m/s", "km/h", "kg/m3", "mmHg", "zygapose-project", "scans"};
    static const QRegularExpression file(
        R"(^[\w./-]*\.(zyga|csv|ply|obj|stl|glb|pdf|svg|png|json|html|txt)$|^no/such/folder$)");
    static const QRegularExpression vertebra(R"(^(C|D|S|Ca)\d+([-–](C|D|S|Ca)\d+)?$)"), print(R"(^[LR][PM]\d+$)");
    return known.contains(word) || ids_.contains(word) || named.contains(word) || file.match(word).hasMatch() ||
           vertebra.match(word).hasMatch() || print.match(word).hasMatch();
  }

  void expectMarked(const QString& text, const Words& words, const QStringList& named = {}) const {
    const QStringList left =
        test::unmarkedWords(withoutNames(text), [&](const QString& word) { return exempt(word, named); });
    EXPECT_EQ(left.join(' ').toStdString(), "") << testing::PrintToString(words) << "\n" << text.toStdString();
  }
  void expectMarked(const QString& key, const QJsonValue& value, const Words& words) const {
    if (value.isString() && !holdsId(key)) expectMarked(value.toString(), words);
    for (const QJsonValue& item : value.toArray()) expectMarked(key, item, words);
    const QJsonObject members = value.toObject();
    for (auto member = members.begin(); member != members.end(); ++member)
      expectMarked(member.key(), member.value(), words);
  }

  static std::unique_ptr<Offscreen> application_;
  static std::unique_ptr<MarkedAbove> marked_;
  QTemporaryDir folder_;
  std::string table_;
  std::set<QString> ids_;
  QString name_;
};

std::unique_ptr<Offscreen> MarkedProgram::application_;
std::unique_ptr<MarkedAbove> MarkedProgram::marked_;

class MarkedVerbs : public MarkedProgram, public testing::WithParamInterface<std::string> {
 protected:
  const VerbSpec& spec() const {
    const auto found =
        std::find_if(verbs().begin(), verbs().end(), [](const Verb& verb) { return verb.spec.name == GetParam(); });
    return found->spec;
  }
  /// Runs a verb and looks at all that it says. Its exit.
  int look(Words words, const QStringList& named = {}) const {
    // The program may tell what it was given.
    QStringList given;
    for (const std::string& word : words)
      if (!word.starts_with("--")) given += QString::fromStdString(word);
    words.insert(words.begin(), GetParam());
    const Said said = run(words);
    expectMarked(said.err, words, named + given);
    if (said.out.startsWith('{')) {
      const QJsonDocument document = QJsonDocument::fromJson(said.out.toUtf8());
      EXPECT_TRUE(document.isObject()) << testing::PrintToString(words);
      expectMarked(QString(), document.object(), words);
    } else {
      expectMarked(said.out, words, given);
    }
    EXPECT_FALSE(said.out.isEmpty() && said.err.isEmpty()) << testing::PrintToString(words);
    return said.exit;
  }

  static QStringList partsOf(std::string_view placeholder) {
    return QString::fromUtf8(placeholder.data(), static_cast<qsizetype>(placeholder.size()))
        .remove("...")
        .split(QRegularExpression("[^A-Za-z0-9.-]+"), Qt::SkipEmptyParts);
  }
  /// The names of what options take, which a missing option is told with.
  QStringList namesOfValues() const {
    QStringList names = partsOf(spec().file);
    for (const OptionSpec& option : spec().options) names += partsOf(option.value);
    return names;
  }
};

Words verbNamesAll() {
  Words names;
  for (const Verb& verb : verbs()) names.emplace_back(verb.spec.name);
  return names;
}

TEST_P(MarkedVerbs, HelpSaysNothingElse) {
  for (const Words& words : {Words{"help", GetParam()}, Words{GetParam(), "--help"}}) {
    const Said said = run(words);
    EXPECT_EQ(said.exit, 0);
    QString text = said.out;
    for (const OptionSpec& option : spec().options) {
      // The option and the name of its value stand before what it means.
      const QString value = QString::fromUtf8(option.value);
      text.remove(QRegularExpression("^  " + QRegularExpression::escape(QString::fromUtf8(option.name)) + " " +
                                         QRegularExpression::escape(value) + " +",
                                     QRegularExpression::MultilineOption));
    }
    text.remove(QRegularExpression("^zygapose [a-z]+ \\S+ "));
    expectMarked(text, words);
    EXPECT_TRUE(said.out.contains(test::kMarked));
  }
}

TEST_P(MarkedVerbs, AnswersSayNothingElse) {
  ASSERT_TRUE(usualRuns().contains(GetParam())) << "a new verb: tell usualRuns() how it is used";
  const Runs& runs = usualRuns().at(GetParam());
  const auto lookAt = [&](const std::string& table, const std::vector<Words>& all) {
    if (all.empty()) return;
    makeProjects(table);
    for (const Words& words : all) EXPECT_NE(look(withTable(words)), kBadInput) << testing::PrintToString(words);
  };
  for (const char* sample : {"high_browser.csv", "low_browser.csv"})
    lookAt(std::string(ZYGAPOSE_SOURCE_DIR "/samples/") + sample, runs.ofBoth);
  lookAt("small.csv", runs.ofSmall);
}

TEST_P(MarkedVerbs, ComplaintsSayNothingElse) {
  ASSERT_TRUE(usualRuns().contains(GetParam()));
  makeProjects("small.csv");
  const Runs& runs = usualRuns().at(GetParam());
  const Words good = withTable((runs.ofBoth.empty() ? runs.ofSmall : runs.ofBoth).front());
  const auto with = [&good](const Words& more) {
    Words all = good;
    all.insert(all.end(), more.begin(), more.end());
    return all;
  };
  /// The same with another file.
  const auto of = [&good](const std::string& file) {
    Words all = good;
    all.front() = file;
    return all;
  };
  const QStringList file = partsOf(spec().file), verb{QString::fromStdString(GetParam())};

  EXPECT_EQ(look(with({"--nonsense"}), verb), kBadInput);
  EXPECT_EQ(look(with({"--json=nonsense", "--nonsense=1"}), verb), kBadInput);
  if (!spec().manyFiles) {
    EXPECT_EQ(look(with({"nonsense"}), verb + file), kBadInput);
  }
  EXPECT_EQ(look(of("nowhere.zyga")), kBadInput);
  const QStringList ofHoles{"nothing", "abc",    "guessed",  "cervicals",
                            "bone",    "length", "evidence", "source"};  // in holes.csv, or should be
  for (const std::string& broken : brokenFiles(spec().file))
    EXPECT_EQ(look(of(broken), broken == "holes.csv" ? ofHoles : QStringList()), kBadInput) << broken;
  look({}, file);
  look({good.front()}, namesOfValues());
  for (const OptionSpec& option : spec().options) {
    const std::string name(option.name);
    if (option.value.empty()) continue;
    EXPECT_EQ(look(with({name}), partsOf(option.value)), kBadInput) << name;
    look(with({name, "nonsense"}));
    look(with({name, "-1e9"}));
    look(with({name, ""}), partsOf(option.value));
    if (!option.value.starts_with("FILE")) continue;
    for (const char* ending : {"json", "pdf", "png"}) look(with({name, "no/such/folder/o." + std::string(ending)}));
  }
}

/// Literals of two words and more in the sources of verbs, but for those that are marked for translation. A sentence
/// that is translated and not marked is marked by the language of this test all the same, and yet no translator would
/// ever see it.
TEST(MarkedVerbsSources, HoldNoSentencesButThoseForTranslators) {
  static const QRegularExpression comment("//[^\n]*|#include[^\n]*");
  static const QRegularExpression forTranslators(R"(QT_TRANSLATE(_N)?_NOOP\(\s*"words",\s*("(\\.|[^"\\])*"\s*)+\))");
  static const QRegularExpression literal(R"re("((?:\\.|[^"\\])*)")re"),
      words(R"([A-Za-z]{2,}[^\w"]* [^\w"]*[A-Za-z]{2,})");
  int sentences = 0;
  for (const char* folder : {"/app/verbs", "/app/arguments"})
    for (const QFileInfo& source :
         QDir(QString(ZYGAPOSE_SOURCE_DIR) + folder).entryInfoList({"*.cpp", "*.h"}, QDir::Files)) {
      QFile file(source.filePath());
      ASSERT_TRUE(file.open(QIODevice::ReadOnly));
      QString text = QString::fromUtf8(file.readAll()).remove(comment);
      for (auto found = forTranslators.globalMatch(text); found.hasNext(); found.next()) ++sentences;
      text.remove(forTranslators);
      for (auto found = literal.globalMatch(text); found.hasNext();) {
        const QString said = found.next().captured(1);
        const bool id = said == "shoulder girdle" || said == "hip girdle";  // of regions, in JSON
        EXPECT_FALSE(said.contains(words) && !id) << source.fileName().toStdString() << ": " << said.toStdString();
      }
    }
  EXPECT_GT(sentences, 300);
}

TEST_F(MarkedProgram, GeneralHelpAndUnknownVerbsSayNothingElse) {
  for (const Words& words : {Words{"help"}, Words{"--help"}}) {
    const Said said = run(words);
    EXPECT_EQ(said.exit, 0);
    QString text = said.out;
    for (const Verb& verb : verbs()) {
      const QString line = "^  " + QString::fromUtf8(verb.spec.name) + " +";
      EXPECT_TRUE(text.contains(QRegularExpression(line, QRegularExpression::MultilineOption)));
      text.remove(QRegularExpression(line, QRegularExpression::MultilineOption));
    }
    text.remove(QRegularExpression("^  help +", QRegularExpression::MultilineOption));
    expectMarked(text, words);
  }
  for (const Words& words : {Words{"nonsense"}, Words{"help", "nonsense"}, Words{"make", "--language"},
                             Words{"make", "--language", "nonsense"}}) {
    const Said said = run(words);
    EXPECT_EQ(said.exit, kBadInput);
    expectMarked(said.err, words, {"CODE"});
    EXPECT_TRUE(said.err.contains(test::kMarked));
  }
}

INSTANTIATE_TEST_SUITE_P(Each, MarkedVerbs, testing::ValuesIn(verbNamesAll()),
                         [](const auto& verb) { return verb.param; });

}  // namespace
}  // namespace zyga::app
