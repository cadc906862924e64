#include "core/files/project/project_scan_files.h"

#include <sys/stat.h>

#include <algorithm>
#include <map>
#include <mutex>
#include <set>

#include "core/files/disk/atomic_file.h"
#include "core/files/disk/plain_file.h"
#include "core/files/project/project_faults.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kScansFolder = "scans/";
constexpr std::uint64_t kLargestMesh = 4ull << 30;  ///< bytes; a hundred million triangles
constexpr int kSearchDepth = 3;                     ///< folders in folders that are searched
constexpr std::size_t kMostFiles = 5000;            ///< files that are looked at in a search

/// "scans/NAME" and no way out of it.
bool plainPlace(const std::string& file) {
  return file.starts_with(kScansFolder) && file.size() > kScansFolder.size() &&
         file.find('/', kScansFolder.size()) == std::string::npos && file.find("..") == std::string::npos;
}

/// A file as it was when its checksum was last found right, so that saving need not read all meshes each time.
struct SeenFile {
  dev_t device = 0;
  ino_t inode = 0;
  off_t size = 0;
  std::int64_t changed = 0;  ///< ns
  std::string checksum;
  bool operator==(const SeenFile&) const = default;
};

class SeenFiles {
 public:
  static SeenFiles& all() {
    static SeenFiles files;
    return files;
  }
  void note(const fs::path& file, const std::string& checksum) {
    const SeenFile seen = look(file, checksum);
    const std::lock_guard<std::mutex> lock(mutex_);
    files_[file.string()] = seen;
  }
  bool holds(const fs::path& file, const std::string& checksum) {
    const SeenFile now = look(file, checksum);
    const std::lock_guard<std::mutex> lock(mutex_);
    const auto found = files_.find(file.string());
    return found != files_.end() && now.inode != 0 && found->second == now;
  }

 private:
  static SeenFile look(const fs::path& file, const std::string& checksum) {
    struct stat about {};
    if (::stat(file.c_str(), &about) != 0) return {};
    return {about.st_dev, about.st_ino, about.st_size, about.st_mtim.tv_sec * 1'000'000'000LL + about.st_mtim.tv_nsec,
            checksum};
  }

  std::mutex mutex_;
  std::map<std::string, SeenFile> files_;
};

reason::Reason mendOf(const reason::Reason& cause) {
  using namespace fault;
  const auto among = [&](std::initializer_list<reason::Id> ids) {
    return std::find(ids.begin(), ids.end(), cause.id) != ids.end();
  };
  if (among({kNoSuchFile, kNoFolder, kLinkToNothing, kLinkLoop, kNotInside})) return kPutScanBack;
  if (among({kMayNotRead, kNotPermitted})) return kAllowReading;
  if (among({kNotPlain})) return kPutPlainFile;
  if (among({kScanElsewhere, kScanChanged, kScanForeign, kScanCutShort, kScanDamaged, kTooLargeInside, kDamagedInside}))
    return kTakeFromCopy;
  return kOpenAgain;
}

reason::Reason unusable(const ProjectScan& kept, const fs::path& file, const reason::Reason& cause) {
  return {fault::kScanUnusable,
          {reason::text(toId(kept.scan.bone)), pathText(file), reason::inner(cause), reason::inner(mendOf(cause))}};
}

std::shared_ptr<const solid::TriangleMesh> meshFrom(const std::string& bytes, const anatomy::Scan& scan) {
  if (scanChecksum(bytes) != scan.checksum) throw FileError(fault::kScanChanged);
  return std::make_shared<solid::TriangleMesh>(parseScanPly(bytes));
}

/// Whether a search is of any use for a scan.
bool stillWanted(const ProjectScan& kept) { return !kept.mesh && plainPlace(kept.scan.file); }

/// Takes the file for every scan that it is the mesh of. How many these are.
std::size_t tryFile(const fs::path& file, const fs::path& project, std::vector<ProjectScan>& scans) {
  std::size_t taken = 0;
  try {
    if (!looksLikeScanPly(readPlain(file, kScanPlyHead))) return 0;
    const std::string bytes = readPlain(file);
    const std::string checksum = scanChecksum(bytes);
    std::shared_ptr<const solid::TriangleMesh> mesh;
    for (ProjectScan& kept : scans) {
      if (!stillWanted(kept) || kept.scan.checksum != checksum) continue;
      if (!mesh) mesh = std::make_shared<solid::TriangleMesh>(parseScanPly(bytes));
      kept.mesh = mesh;
      kept.borders = solid::openBorders(*kept.mesh);
      kept.trouble = {};
      kept.moved = {fault::kScanMoved,
                    {reason::text(toId(kept.scan.bone)), pathText(project / kept.scan.file), pathText(file)}};
      ++taken;
    }
  } catch (const FileError&) {  // none of ours
  }
  return taken;
}

/// Looks at the plain files of a folder, `deep` folders down, until no mesh is wanted any more.
std::size_t lookIn(const fs::path& folder, int deep, const fs::path& project, std::vector<ProjectScan>& scans) {
  std::size_t found = 0, seen = 0;
  std::error_code failed;
  constexpr auto kSkip = fs::directory_options::skip_permission_denied;
  std::vector<fs::path> files;
  for (fs::recursive_directory_iterator at(folder, kSkip, failed), end; !failed && at != end; at.increment(failed)) {
    std::error_code unknown;
    if (at.depth() >= deep) at.disable_recursion_pending();
    if (at->is_regular_file(unknown) && (at->path().extension() == ".ply" || at->path().extension() == ".PLY"))
      files.push_back(at->path());
    if (++seen == kMostFiles) break;
  }
  std::sort(files.begin(), files.end());
  std::set<fs::path> known;
  for (const ProjectScan& kept : scans)
    if (kept.mesh) known.insert(fs::path(kept.scan.file).filename());
  for (const fs::path& file : files) {
    if (std::none_of(scans.begin(), scans.end(), stillWanted)) break;
    if (known.contains(file.filename())) continue;  // named by its content: it is another one's
    found += tryFile(file, project, scans);
  }
  return found;
}

void lookBeside(std::vector<ProjectScan>& scans, const fs::path& project) {
  if (std::none_of(scans.begin(), scans.end(), stillWanted)) return;
  const fs::path parent = project.parent_path(), folder = parent.empty() ? fs::path(".") : parent;
  lookIn(folder, 0, parent, scans);
  lookIn(folder / kScansFolder, 0, parent, scans);
}

/// Whether the mesh lies there already. What else stands under its name is renamed, and told.
bool lies(const fs::path& file, const ProjectScan& kept, ScansSaved& saved) {
  std::error_code failed;
  if (const auto kind = unplainAt(file))
    throw FileError(
        {fault::kCannotSave,
         {pathText(file), reason::inner({fault::kNotPlain, {*kind}}), reason::inner(fault::kChooseOtherFolder)}});
  if (!fs::exists(file, failed)) return false;
  if (SeenFiles::all().holds(file, kept.scan.checksum)) return true;
  try {
    if (scanChecksum(readPlain(file)) == kept.scan.checksum) {
      SeenFiles::all().note(file, kept.scan.checksum);
      return true;
    }
  } catch (const FileError&) {  // it may not be read: renamed it is not lost
  }
  fs::path aside = file.string() + ".other";
  for (int n = 2; fs::exists(aside, failed); ++n) aside = file.string() + ".other" + std::to_string(n);
  fs::rename(file, aside, failed);
  if (!failed) saved.setAside.push_back(aside);
  return false;
}

void makeFolder(const fs::path& folder, ScansSaved& saved) {
  std::error_code failed, other;
  if (fs::create_directory(folder, failed)) saved.folderMade = true;
  if (failed)
    throw FileError({fault::kCannotMakeFolder,
                     {pathText(folder), reason::inner(fs::exists(folder, other)
                                                          ? reason::Reason(fault::kFileNotFolder, {pathText(folder)})
                                                          : systemCause(failed.value()))}});
}

}  // namespace

ScansSaved saveScanMeshes(const std::vector<ProjectScan>& scans, const fs::path& project) {
  ScansSaved saved;
  std::set<std::string> written;  // a mirrored bone shares its mesh
  for (const ProjectScan& kept : scans) {
    if (!kept.mesh) {
      saved.lost.push_back(toId(kept.scan.bone));
      continue;
    }
    ++saved.kept;
    const fs::path file = project.parent_path() / kept.scan.file;
    saved.folder = file.parent_path();
    if (!written.insert(kept.scan.file).second || lies(file, kept, saved)) continue;
    makeFolder(file.parent_path(), saved);
    writeWhole(file, scanPly(*kept.mesh));
    SeenFiles::all().note(file, kept.scan.checksum);
  }
  return saved;
}

std::vector<ContainerEntry> scanEntries(const std::vector<ProjectScan>& scans) {
  std::map<std::string, ContainerEntry> entries;
  for (const ProjectScan& kept : scans) {
    if (!kept.mesh) continue;
    entries[kept.scan.file] = {kept.scan.file, scanPlySize(*kept.mesh), [mesh = kept.mesh] { return scanPly(*mesh); }};
  }
  std::vector<ContainerEntry> out;
  for (auto& [name, entry] : entries) out.push_back(std::move(entry));
  return out;
}

void loadScanMeshes(std::vector<ProjectScan>& scans, const fs::path& project) {
  for (ProjectScan& kept : scans) {
    if (kept.mesh) continue;
    const fs::path file = project.parent_path() / kept.scan.file;
    try {
      if (!plainPlace(kept.scan.file)) throw FileError(fault::kScanElsewhere);
      kept.mesh = meshFrom(readPlain(file), kept.scan);
      kept.borders = solid::openBorders(*kept.mesh);
      kept.trouble = {};
      SeenFiles::all().note(file, kept.scan.checksum);
    } catch (const FileError& error) {
      kept.trouble = unusable(kept, file, error.reason());
    }
  }
  lookBeside(scans, project);
}

void loadScanMeshes(std::vector<ProjectScan>& scans, const Container& container, const fs::path& name) {
  for (ProjectScan& kept : scans) {
    if (kept.mesh) continue;
    try {
      if (!plainPlace(kept.scan.file)) throw FileError(fault::kScanElsewhere);
      kept.mesh = meshFrom(container.read(kept.scan.file, kLargestMesh), kept.scan);
      kept.borders = solid::openBorders(*kept.mesh);
      kept.trouble = {};
    } catch (const FileError& error) {
      kept.trouble = unusable(kept, name / kept.scan.file, error.reason());
    }
  }
  lookBeside(scans, name);
}

std::size_t findScanMeshes(std::vector<ProjectScan>& scans, const fs::path& folder) {
  return lookIn(folder, kSearchDepth, folder, scans);
}

}  // namespace zyga::files
