// SPDX-License-Identifier: MIT
/// Records as catalogues exchange them: ISO 2709 with a leader of 24 bytes and a directory of 12 bytes an entry (MARC 21 Record
/// Structure, Library of Congress). One record is kept at a time. Text is UTF-8 (leader/09 is `a`) or ASCII; MARC-8 is told and
/// left to other programs.
#pragma once

#include "input.hpp"
#include "marc.hpp"

#include <optional>

namespace support {

/// Reads records from a source, one after another.
class MarcExchange {
  static constexpr char subfield_mark = '\x1F', field_end = '\x1E', record_end = '\x1D';
  static constexpr std::size_t leader_bytes = 24, entry_bytes = 12, most_bytes = 99999;
  Source& source_;
  std::string waiting_{}, record_{};
  std::string wrong_{};
  bool ended_{};

  /// Takes all up to and with the end of a record; false at the end of the input.
  bool take_record() {
    record_.clear();
    for (std::size_t from = 0;;) {
      auto const end = waiting_.find(record_end, from);
      if (end != waiting_.npos) {
        record_ = waiting_.substr(0, end + 1);
        waiting_.erase(0, end + 1);
        return true;
      }
      if (waiting_.size() > most_bytes) throw Failure{"a record has more than 99999 bytes: this is not ISO 2709"};
      if (ended_) {
        if (waiting_.find_first_not_of(" \r\n\t") == waiting_.npos) return false;
        record_ = std::move(waiting_);
        waiting_.clear();
        return true;
      }
      from = waiting_.size();
      char room[16384];
      auto const taken = source_.read(room, sizeof room);
      if (taken == 0) ended_ = true;
      waiting_.append(room, taken);
    }
  }
  static std::optional<std::size_t> number(std::string_view digits) {
    std::size_t n = 0;
    for (char c : digits) {
      if (c < '0' || c > '9') return std::nullopt;
      n = n * 10 + static_cast<std::size_t>(c - '0');
    }
    return n;
  }
  std::optional<MarcField> field(std::string_view entry, std::size_t base) const {
    auto const length = number(entry.substr(3, 4)), start = number(entry.substr(7, 5));
    if (!length || !start || base + *start + *length > record_.size()) return std::nullopt;
    std::string_view data = std::string_view{record_}.substr(base + *start, *length);
    if (!data.empty() && data.back() == field_end) data.remove_suffix(1);
    MarcField result;
    result.tag = entry.substr(0, 3);
    if (result.tag < "010") {
      result.data = data;
      return result;
    }
    if (data.size() < 2) return result;
    result.first_indicator = data[0], result.second_indicator = data[1];
    for (auto at = data.find(subfield_mark); at != data.npos && at + 1 < data.size();) {
      auto const next = data.find(subfield_mark, at + 1);
      auto const end = next == data.npos ? data.size() : next;
      if (at + 2 <= end) result.subfields.emplace_back(data[at + 1], std::string{data.substr(at + 2, end - at - 2)});
      at = next;
    }
    return result;
  }
  bool take_apart(MarcRecord& record) {
    wrong_.clear();
    auto const start = record_.find_first_not_of("\r\n");
    if (start != record_.npos && start > 0) record_.erase(0, start);
    auto const base = record_.size() < leader_bytes ? std::nullopt : number(std::string_view{record_}.substr(12, 5));
    if (!base || *base > record_.size() || *base < leader_bytes)
      return wrong_ = "the leader of the record is wrong", false;
    bool ascii = true;
    for (char c : record_) ascii = ascii && static_cast<unsigned char>(c) < 0x80;
    if (!ascii && record_[9] != 'a')
      return wrong_ = "the record is in MARC-8 (leader/09 is not 'a'): convert it to UTF-8", false;
    for (auto at = leader_bytes; at + entry_bytes <= *base && record_[at] != field_end; at += entry_bytes) {
      auto one = field(std::string_view{record_}.substr(at, entry_bytes), *base);
      if (!one) return wrong_ = "the directory of the record points outside it", false;
      record.add(std::move(*one));
    }
    return true;
  }

public:
  explicit MarcExchange(Source& source) : source_{source} {}
  /// The next record; none at the end. One that is wrong is empty, and `wrong` says why.
  std::optional<MarcRecord> next() {
    if (!take_record()) return std::nullopt;
    MarcRecord record;
    if (!take_apart(record)) record.clear();
    return record;
  }
  /// Why the record is empty.
  [[nodiscard]] std::string const& wrong() const { return wrong_; }
};

} // namespace support
