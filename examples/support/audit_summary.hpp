// SPDX-License-Identifier: MIT
/// What `audit_records` says on standard error: how far it is, where that is a terminal, and at the end how often each finding
/// was met.
#pragma once

#include <bifolium/book/audit.hpp>
#include <bifolium/core/number_of.hpp>

#include "program.hpp"

#include <array>
#include <chrono>
#include <cstdint>
#include <iostream>
#include <string>

namespace support {

class AuditSummary {
  std::array<std::uint64_t, bifolium::finding_count> found_{};
  std::int64_t records_{}, agree_{}, repaired_{};
  bool terminal_{::isatty(STDERR_FILENO) == 1};
  std::chrono::steady_clock::time_point told_{std::chrono::steady_clock::now()};

public:
  void count(bifolium::Audit const& audit) {
    ++records_;
    if (audit.agrees()) ++agree_;
    if (!audit.repairs.empty()) ++repaired_;
    for (auto const& finding : audit.findings) ++found_[static_cast<std::size_t>(finding.id) - bifolium::first_finding];
    if (!terminal_ || records_ % 256 != 0) return;
    auto const now = std::chrono::steady_clock::now();
    if (now - told_ < std::chrono::seconds{1}) return;
    told_ = now;
    std::cerr << '\r' << bifolium::number_of(records_, "record", "records") << std::flush;
  }
  void tell_all() const {
    if (terminal_) std::cerr << '\r';
    tell(bifolium::number_of(records_, "record; ", "records; ") +
         bifolium::number_of(agree_, "agrees with itself; ", "agree with themselves; ") +
         bifolium::number_of(repaired_, "has proposals", "have proposals"));
    for (std::size_t i = 0; i < found_.size(); ++i)
      if (found_[i] > 0)
        tell(std::string{identifier(static_cast<bifolium::FindingId>(i + bifolium::first_finding))} + ' ' +
             std::to_string(found_[i]));
  }
};

} // namespace support
