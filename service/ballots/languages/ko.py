"""Korean, as viewers write it under a video.

Particles are parted from their words here as the segmenting cuts them; viewers glue them on.
"""

from __future__ import annotations

from service.ballots.language import Language, Phrase, phrases
from service.ballots.languages import ko_composed, ko_counts, ko_numbers
from service.ballots.languages.spelling import extended


def _counted(block: str) -> tuple[Phrase, ...]:
    """The phrases with every counter that may stand before them: 요, 번 요, 페이지 요."""
    found = phrases(block)
    counters = [phrase for part in ko_counts.COUNTERS for phrase in (phrases(part) or ((),))]
    return tuple(counter + phrase for counter in counters for phrase in found)


_PLAIN = Language(
    code="ko",
    everyday=phrases(
        """
        저는 | 제 | 제가 | 나는 | 우리 | 이번 | 이번에 | 이번에도 | 번 | 페이지 | 쪽 | 요 | 이요 | 입니다 | 네 | 안녕하세요 | 감사합니다 |
        부탁드려요 | 부탁해요 | 주세요 | 해주세요 | 할게요 | 좋아요 | 투표 | 너무 | 정말 | 진짜 | 항상 | 늘 | 그리고 | 그런데 | 근데 | 영상 |
        자수 | 십자수 | 예뻐요 | 있어요 | 했어요 | 봤어요 | 보고 | 같아요 | 이거 | 오십시오 | 사십시오 | 이십시오 | 구십시오 |
        juseyo | butakdeuryeoyo | butakhaeyo | butakdeurimnida | annyeonghaseyo | gamsahamnida | peiji | beoniyo
        """
    ),
    numbers=ko_numbers.numbers(),
    ordinals=ko_numbers.ordinals(),
    page=phrases(
        "페이지 | 페이지 번호 | 쪽 | 쪽수 | 장 번호 | 번 페이지 | 번째 페이지 | 번째 장 | 번째 쪽 | peiji"
    ),
    number=phrases("번호 | 번호 는 | 번 | 넘버 | 숫자 | 숫자 는 | 제 | no. | beon"),
    fillers=phrases(
        """
        무조건 | 당연히 | 물론 | 역시 | 아마 | 아마도 | 왠지 | 그냥 | 꼭 | 제발 | 이번엔 | 이번에는 | 이번에 | 오늘은 | 다음은 | 다시 | 또 | 바로 |
        단연 | 혹시
        """
    ),
    choice_before=phrases(
        """
        투표 | 투표 는 | 제 투표 는 | 제 표 는 | 저의 투표 는 | 한표 는 | 제 한표 는 | 선택 | 선택 은 | 제 선택 은 | 저의 선택 은 | 내 선택 은 | 픽 은 | 제 픽 은 |
        제 픽 | 내 픽 은 | 저는 | 전 | 나는 | 난 | 저도 | 저라면 | 제 답 은 | 정답 은 | 제 생각 엔 | 제 생각 에는 | 제 예상 은 | 예상 은 | 추천 은 | 추천 |
        희망 | 부탁드려요 | 부탁해요 | 다음 은 | 이번 에는 | 가능하면 | 가능하다면 | 된다면 | 변경 은 | 정정 | 제 마음 은 | 제 원픽 은 | 원픽 은 | jeoneun
        """
    ),
    choice_after=_counted(
        """
        이요 | 요 | 이여 | 여 | 욥 | 이욥 | 입니다 | 이에요 | 이예요 | 예요 | 에요 | 임 | 으로 | 로 | 으로 해주세요 | 로 해주세요 | 으로 부탁 | 로 부탁 |
        으로 부탁드려요 | 로 부탁드려요 | 으로 부탁드립니다 | 로 부탁드립니다 | 으로 부탁해요 | 로 부탁해요 | 으로 할게요 | 로 할게요 | 으로 갈게요 | 로 갈게요 |
        으로 가요 | 로 가요 | 으로 가자 | 로 가자 | 으로 선택 | 로 선택 | 으로 투표 | 로 투표 | 으로 하겠습니다 | 로 하겠습니다 | 으로 시작 | 로 시작 | 에 투표 |
        에 투표합니다 | 에 투표해요 | 에 투표할게요 | 에 한표 | 에 한표요 | 에 한 표 | 에 한 표요 | 에 걸게요 | 에 겁니다 | 부탁 | 부탁드려요 | 부탁드립니다 |
        부탁드릴게요 | 부탁해요 | 부탁합니다 | 부터 | 부터 시작 | 부터 시작해주세요 | 부터 해주세요 | 부터 가요 | 부터 부탁 | 해주세요 | 해 주세요 | 주세요 |
        할게요 | 할래요 | 하겠습니다 | 갈게요 | 갑니다 | 가요 | 가자 | 가즈아 | 고고 | 투표 | 투표합니다 | 투표해요 | 투표할게요 | 한표 | 한표요 | 한 표 | 한 표요 |
        선택 | 선택할게요 | 선택합니다 | 선택해요 | 고를게요 | 골라요 | 고릅니다 | 골랐어요 | 뽑을게요 | 뽑아요 | 찍어요 | 찍습니다 | 찍을게요 | 밀어요 | 밀어봅니다 |
        원해요 | 원합니다 | 원츄 | 추천 | 추천해요 | 추천합니다 | 추천드려요 | 희망 | 희망해요 | 희망합니다 | 을 원해요 | 를 원해요 | 을 골라요 | 를 골라요 |
        을 선택 | 를 선택 | 을 선택할게요 | 를 선택할게요 | 을 추천 | 를 추천 | 을 보고 싶어요 | 를 보고 싶어요 | 이 보고 싶어요 | 가 보고 싶어요 | 보고 싶어요 |
        궁금해요 | 이 궁금해요 | 가 궁금해요 | 이 좋아요 | 가 좋아요 | 이 좋겠어요 | 가 좋겠어요 | 좋아요 | 좋겠어요 | 좋을 것 같아요 | 이 좋을 것 같아요 |
        가 좋을 것 같아요 | 이 끌려요 | 가 끌려요 | 끌려요 | 어때요 | 어떨까요 | 어떠세요 | 은 어때요 | 는 어때요 | 은 어떨까요 | 는 어떨까요 | 픽 | 픽이요 |
        원픽 | 예상 | 예상합니다 | 예뻐 보여요 | 이 예뻐 보여요 | 가 예뻐 보여요 | 가 먼저 | 먼저 | 이겨라 | 이다 | 다
        """
    )
    + phrases(
        "번 | 페이지 | 쪽 | 번 페이지 | 번째 페이지 | 번째 장 | 번째 쪽 | beon | peiji | juseyo | beon juseyo | peiji juseyo | beoniyo"
    ),
    other_before=phrases(ko_counts.OTHER_BEFORE),
    other_after=phrases(ko_counts.OTHER_AFTER),
    weak_before=phrases(ko_counts.WEAK_BEFORE),
    weak_after=phrases(ko_counts.WEAK_AFTER),
    neutral_before=phrases(ko_counts.NEUTRAL_BEFORE),
    neutral_after=phrases(ko_counts.NEUTRAL_AFTER),
    lucky_before=phrases(
        """
        행운 의 숫자 | 행운 의 숫자 는 | 제 행운 의 숫자 는 | 행운 의 번호 는 | 럭키 넘버 | 럭키 넘버 는 | 럭키넘버 | 럭키넘버 는 | 좋아하는 숫자 | 좋아하는 숫자 는 |
        제가 좋아하는 숫자 는 | 제일 좋아하는 숫자 는 | 좋아하는 번호 는
        """
    ),
    not_before=phrases("안 | 절대 | 빼고"),
    not_after=_counted(
        """
        말고 | 만 빼고 | 빼고 | 은 빼고 | 는 빼고 | 만 아니면 | 만 아니라면 | 제외 | 제외하고 | 을 제외하고 | 를 제외하고 | 은 안 | 는 안 | 은 싫어요 | 는 싫어요 | 은 별로 |
        는 별로 | 은 아니 | 는 아니 | 이 아니라 | 가 아니라 | 아니고 | 대신 | 은 피해주세요 | 외에
        """
    ),
    correction=phrases(
        """
        아니 | 아니다 | 아니요 | 아뇨 | 아니아니 | 아 아니 | 앗 | 헉 | 잠깐 | 잠깐만요 | 실수 | 오타 | 잘못 | 잘못 썼 | 정정 | 정정합니다 | 정정할게요 | 수정 | 수정합니다 |
        바꿀게요 | 바꿔요 | 변경 | 변경할게요 | 변경합니다 | 농담 | 농담이고 | 죄송해요 | 죄송합니다 | 이 아니라 | 가 아니라 | 말고
        """
    ),
    soft_correction=phrases("차라리 | 그냥 | 역시 | 아 | 다시"),
    either=phrases("이나 | 나 | 아니면 | 또는 | 혹은 | 이거나 | 거나"),
    also=phrases("와 | 과 | 랑 | 이랑 | 하고 | 그리고 | 및 | 도"),
    second=phrases(
        """
        안되면 | 안 되면 | 이 안되면 | 이 안 되면 | 없으면 | 이 없으면 | 차선 | 차선 은 | 두번째 는 | 두번째 선택 은 | 2순위 | 2순위 는 | 그다음 | 그 다음 | 그다음 은 | 그 다음 은 | 다음 으로
        """
    ),
    first_choice=phrases("1순위 | 1순위 는 | 첫번째 선택 은"),
    second_choice=phrases("2순위 | 2순위 는 | 두번째 선택 은 | 차선 은"),
    condition=_counted(
        """
        이 비었으면 | 가 비었으면 | 이 아직 없으면 | 가 아직 없으면 | 아무도 안 | 이 남아있으면 | 가 남아있으면 | 이 가능하면 | 누가 안
        """
    ),
    depends=phrases("따라 | 상황 봐서"),
    ranked=phrases("순서 로 | 순 으로 | 순서대로 | 순 입니다"),
    tally_before=phrases("명 이 | 표 가 | 사람 이"),
    topics=phrases(
        "사이즈 | 바늘 | 원단 | 실 | 색 | 색상 | 카운트 | 몇시간 | 몇 시간 | 가격 | 얼마"
    ),
    ages=phrases("제 나이 | 내 나이 | 생년 | 생일 | 태어난 해"),
    reported_before=phrases(
        """
        다들 | 모두 | 모두 가 | 많은 분들 이 | 다른 분들 | 다른 분들 은 | 누가 | 누군가 | 사람들 이 | 사람들 은 | 댓글 에 | 저번 에는 | 저번엔 | 지난번 에는 | 지난번엔 | 처음 엔 | 원래 |
        인기 는
        """
    ),
    family_before=phrases(
        """
        남편 | 신랑 | 아내 | 와이프 | 아들 | 딸 | 엄마 | 어머니 | 아빠 | 아버지 | 할머니 | 할아버지 | 언니 | 오빠 | 누나 | 형 | 동생 | 여동생 | 남동생 | 친구 | 손주 | 손자 | 손녀 | 고양이 |
        강아지 | 남자친구 | 여자친구 | 시어머니 | 이모 | 고모 | 동료
        """
    ),
    reported_after=_counted(
        """
        이래요 | 래요 | 이라고 해요 | 라고 해요 | 이라고 하네요 | 라고 하네요 | 이라네요 | 라네요 | 이라는데 | 라는데 | 이래 | 벌써 | 벌써 나왔나요 | 이미 | 은 이미 | 는 이미 | 은 벌써 | 는 벌써 |
        나왔나요 | 나왔어요 | 이 인기 | 가 인기 | 이 이길 | 가 이길 | 이 이기 | 가 이기 | 이 많네요 | 가 많네요 | 많네요 | 우세 | 누가 | 은 누가 | 는 누가
        """
    ),
    asking=phrases("왜 | 누가 | 누구 | 몇 | 언제 | 어디 | 혹시 | 벌써 | 이미"),
    suggesting=phrases("어때요 | 어떨까요 | 부탁 | 주세요 | 될까요"),
    saying=phrases("이래요 | 래요 | 라고 | 이라고 | 했어요 | 하네요 | 말해요 | 외쳐요"),
    goes_on=phrases("도 좋아요 | 도 예뻐요"),
    roughly_before=phrases("대략 | 약 | 거의 | 한"),
    roughly_after=_counted(
        "대 | 대 에서 | 대 로 | 쯤 | 쯤요 | 쯤이요 | 정도 | 정도요 | 근처 | 근처요 | 부근 | 언저리 | 전후 | 내외 | 즈음"
    ),
    between=phrases("사이 | 에서"),
    through=phrases("에서 | 부터 | ~ | 〜"),
    question_before=phrases("총 | 전체 | 전부"),
    relative_after=_counted(
        """
        아래 | 밑 | 위 | 옆 | 바로 아래 | 바로 위 | 바로 옆 | 오른쪽 | 왼쪽 | 다음 페이지 | 이전 페이지 | 의 아래 | 의 위 | 의 옆 | 대각선
        """
    ),
    withdrawn=phrases(
        """
        투표 취소 | 제 투표 취소 | 투표 를 취소 | 투표 취소해 | 투표 취소해주세요 | 투표 취소해 주세요 | 투표 취소할게요 | 투표 취소합니다 | 투표 철회 | 투표 철회합니다 | 투표 무효 | 표 취소 | 제 표 는 빼 | 제 표 빼 |
        제 투표 는 무시 | 제 투표 무시 | 제 투표 는 빼 | 취소할게요 | 취소해주세요 | 취소해 주세요 | 취소합니다
        """
    ),
    abstaining=phrases(
        """
        아무거나 | 아무거나요 | 아무 거나 | 아무거나 좋아요 | 아무 페이지 | 아무 페이지 나 | 아무 데나 | 아무데나 | 다 좋아요 | 알아서 | 알아서 골라주세요 | 알아서 해주세요 | 골라주세요 | 마음대로 | 맘대로 | 랜덤 | 랜덤으로 |
        기권 | 기권합니다 | 투표 안 | 투표 안 할게요 | 못 고르겠어요 | 못고르겠어요 | 고민 중 | 고민중 | 결정 못 | 선택 못 | 상관없어요 | 상관 없어요 | 원하시는 | 맡길게요 | 맡기겠습니다 | 서프라이즈
        """
    ),
    pointing=phrases(
        """
        같은 걸로 | 같은 거 | 같은거 | 같은걸로 | 윗분 | 윗분 이랑 같은 | 위 와 같은 | 위 와 같아요 | 윗분 과 같은 | 저도 같은 | 저도요 | 나도 | 동감 | 동의 | 동의합니다 | 제 나이 로 | 제 나이 만큼 | 제 생일 로 | 상동 | +1
        """
    ),
    agreeing=phrases("저도요 | 저도 | 나도 | 동감 | 동의 | 동의합니다 | 맞아요 | 인정 | 네 | +1"),
    kinds=phrases(
        """
        짝수 | 홀수 | 짝수 페이지 | 홀수 페이지 | 소수 | 맨 윗줄 | 맨 아랫줄 | 윗줄 | 아랫줄 | 가장자리 | 끝 쪽 | 중간 쯤 | 가운데 쯤 | 중간쯤 | 가운데쯤 | 가운데 근처 | 위쪽 | 아래쪽 | 두자리 | 두 자리
        """
    ),
    first=phrases("첫 | 첫번째 | 첫 번째 | 맨 첫 | 제일 첫 | 맨 처음 | 제일 처음 | 처음"),
    last=phrases("마지막 | 맨 마지막 | 제일 마지막 | 맨 끝 | 끝"),
    corner=phrases("모서리 | 모서리 쪽 | 구석 | 구석탱이 | 코너 | 귀퉁이"),
    top=phrases("위 | 위쪽 | 맨위 | 맨 위 | 상단 | 윗쪽"),
    bottom=phrases("아래 | 아래쪽 | 맨아래 | 맨 아래 | 하단 | 밑"),
    left=phrases("왼쪽 | 왼편 | 좌측 | 맨 왼쪽 | 왼"),
    right=phrases("오른쪽 | 오른편 | 우측 | 맨 오른쪽 | 오른"),
    middle=phrases(
        "가운데 | 정가운데 | 한가운데 | 정중앙 | 중앙 | 정중간 | 중간 | 한복판 | 정 가운데 | 제일 가운데 | 딱 가운데"
    ),
    row=phrases("줄 | 행"),
    column=phrases("열 | 칸"),
    told_from_last=phrases(
        "마지막 에서 두번째 | 마지막 에서 두 번째 | 끝 에서 두번째 | 끝 에서 두 번째 | 마지막 전"
    ),
)

LANGUAGE = extended(_PLAIN, ko_composed.GROUPS)
